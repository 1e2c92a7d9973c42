package org.drillwright.reading;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.drillwright.grammar.Chart;
import org.drillwright.grammar.Phrase;
import org.drillwright.lexicon.Token;
import org.drillwright.meaning.Meant;
import org.drillwright.notation.Measure;
import org.drillwright.notation.MeasureCue;

/** Reads distance cues: one measure, or two with a 'to' between. */
final class Cues {

    private static final Set<String> MEASURES = Set.of("MEAS", "CUE");
    private static final Set<String> SMALL = Set.of("DET", "P", "AND", "TO");

    private Cues() {}

    /** The cue that these words are; empty if they hold anything but one measure or two. */
    static Optional<MeasureCue> read(List<Token> words, Chart<Meant> chart) {
        List<Measure> measures = new ArrayList<>();
        int at = 0;
        while (at < words.size()) {
            Optional<Phrase<Meant>> measure = longest(chart.from(at), MEASURES);
            Optional<Phrase<Meant>> small = longest(chart.from(at), SMALL);
            if (measure.isPresent()) {
                measures.add(named(measure.get().features().get("meas").orElse("out")));
                at = measure.get().to();
            } else if (small.isPresent() || !words.get(at).isWord()) {
                at = small.map(Phrase::to).orElse(at + 1);
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

    private static Optional<Phrase<Meant>> longest(List<Phrase<Meant>> found, Set<String> categories) {
        return found.stream()
                .filter(phrase -> categories.contains(phrase.category()))
                .max(Comparator.comparingInt(Phrase::to));
    }

    private static Measure named(String name) {
        return Stream.of(Measure.values())
                .filter(measure -> measure.word().equals(name.replace("-distance", "")))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no measure " + name));
    }
}
