package org.drillwright.autofix;

import java.util.Comparator;
import java.util.List;
import org.drillwright.source.Span;

/** A stretch of a text, and what is to stand there instead. */
public record Edit(Span span, String text) {

    static Edit insert(int at, String text) {
        return new Edit(Span.at(at), text);
    }

    /** The text with all of the edits made; they may not overlap. */
    public static String apply(String text, List<Edit> edits) {
        StringBuilder made = new StringBuilder(text);
        edits.stream()
                .sorted(Comparator.comparingInt((Edit edit) -> edit.span().start())
                        .reversed())
                .forEach(edit -> made.replace(edit.span().start(), edit.span().end(), edit.text()));
        return made.toString();
    }
}
