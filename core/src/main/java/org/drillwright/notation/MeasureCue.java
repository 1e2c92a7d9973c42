package org.drillwright.notation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A distance cue: one measure, or one that changes within the count.
 *
 * @param from where the count begins
 * @param to where it ends; the same if the cue names one measure
 */
public record MeasureCue(Measure from, Measure to) {

    /** Reads a cue; empty if it holds anything but one measure or two with a 'to' between. */
    public static Optional<MeasureCue> read(String text, Vocabulary vocabulary) {
        List<Measure> measures = new ArrayList<>();
        for (Lexeme lexeme : vocabulary.lexemes(Tokens.of(text), MeasureCue::belongs)) {
            if (lexeme.is(TermKind.MEASURE) || lexeme.is(TermKind.CUE)) {
                measures.add(Measure.named(lexeme.id()));
            } else if (lexeme.isUnknown()) {
                return Optional.empty();
            }
        }
        return switch (measures.size()) {
            case 1 -> Optional.of(new MeasureCue(measures.get(0), measures.get(0)));
            case 2 -> Optional.of(new MeasureCue(measures.get(0), measures.get(1)));
            default -> Optional.empty();
        };
    }

    private static boolean belongs(Form form) {
        TermKind kind = form.term().kind();
        return kind == TermKind.MEASURE || kind == TermKind.CUE || kind == TermKind.LINK || kind == TermKind.DET;
    }

    /** Whether the cue names one measure only. */
    public boolean isOne() {
        return from == to;
    }

    @Override
    public String toString() {
        return isOne() ? from.word() : from.word() + " to " + to.word();
    }
}
