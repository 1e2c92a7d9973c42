package org.drillwright.reading;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.drillwright.lexicon.Lexicon;
import org.drillwright.lexicon.Token;
import org.drillwright.notation.Measure;
import org.drillwright.notation.MeasureCue;

/** Reads distance cues: one measure, or two with a 'to' between. */
final class Cues {

    private static final Set<String> MEASURES = Set.of("MEAS", "MEASX", "CUE");
    private static final Set<String> SMALL = Set.of("DET", "P", "AND", "TO");

    private Cues() {}

    /** The cue in this language; empty if it holds anything but one measure or two. */
    static Optional<MeasureCue> read(String text, Tongue tongue) {
        List<Token> tokens = tongue.lexicon().words(text);
        List<Measure> measures = new ArrayList<>();
        int at = 0;
        while (at < tokens.size()) {
            Optional<Lexicon.Match> measure = longest(tongue.lexicon().at(tokens, at), MEASURES);
            Optional<Lexicon.Match> small = longest(tongue.lexicon().at(tokens, at), SMALL);
            if (measure.isPresent()) {
                measures.add(named(measure.get().entry().features().get("meas").orElse("out")));
                at = measure.get().end();
            } else if (small.isPresent() || !tokens.get(at).isWord()) {
                at = small.map(Lexicon.Match::end).orElse(at + 1);
            } else {
                return Optional.empty();
            }
        }
        return switch (measures.size()) {
            case 1 -> Optional.of(new MeasureCue(measures.get(0), measures.get(0)));
            case 2 -> Optional.of(new MeasureCue(measures.get(0), measures.get(1)));
            default -> Optional.empty();
        };
    }

    private static Optional<Lexicon.Match> longest(List<Lexicon.Match> found, Set<String> categories) {
        return found.stream()
                .filter(match -> categories.contains(match.entry().category()))
                .max(Comparator.comparingInt(Lexicon.Match::end));
    }

    private static Measure named(String name) {
        for (Measure measure : Measure.values()) {
            if (measure.word().equals(name.replace("-distance", ""))) {
                return measure;
            }
        }
        throw new IllegalArgumentException("no measure " + name);
    }
}
