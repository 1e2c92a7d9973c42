package org.drillwright.print.text;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.drillwright.print.frame.Face;

/** A stretch of text in one face. */
public record Styled(String text, Face face) {

    static String text(List<Styled> parts) {
        return parts.stream().map(Styled::text).collect(Collectors.joining());
    }

    /** The same text with neighbours of one face made one, so that they are kerned together. */
    static List<Styled> joined(List<Styled> parts) {
        List<Styled> joined = new ArrayList<>();
        for (Styled part : parts) {
            int last = joined.size() - 1;
            if (last >= 0 && joined.get(last).face() == part.face()) {
                joined.set(last, new Styled(joined.get(last).text() + part.text(), part.face()));
            } else {
                joined.add(part);
            }
        }
        return joined;
    }
}
