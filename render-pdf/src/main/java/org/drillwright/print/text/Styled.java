package org.drillwright.print.text;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.RunRole;

/** A stretch of text in one face. */
public record Styled(String text, Face face, RunRole span) {

    public Styled(String text, Face face) {
        this(text, face, RunRole.PLAIN);
    }

    /** Other text in the same style. */
    Styled saying(String other) {
        return new Styled(other, face, span);
    }

    boolean isStyledAs(Styled other) {
        return face == other.face && span.equals(other.span);
    }

    static String text(List<Styled> parts) {
        return parts.stream().map(Styled::text).collect(Collectors.joining());
    }

    /** The same text with neighbours of one style made one, so that they are kerned together. */
    static List<Styled> joined(List<Styled> parts) {
        List<Styled> joined = new ArrayList<>();
        StringBuilder run = new StringBuilder();
        for (int at = 0; at < parts.size(); at++) {
            Styled part = parts.get(at);
            run.append(part.text());
            if (at == parts.size() - 1 || !parts.get(at + 1).isStyledAs(part)) {
                joined.add(part.saying(run.toString()));
                run.setLength(0);
            }
        }
        return joined;
    }
}
