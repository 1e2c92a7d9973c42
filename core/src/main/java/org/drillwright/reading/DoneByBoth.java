package org.drillwright.reading;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.drillwright.grammar.Chart;
import org.drillwright.grammar.Phrase;
import org.drillwright.lexicon.LexicalEntry;
import org.drillwright.lexicon.Lexicon;
import org.drillwright.lexicon.Token;
import org.drillwright.meaning.Meant;
import org.drillwright.notation.Action;

/** What a sentence says that both do: 'both lunge here', 'because both lunge', 'they lunge together'; not 'never let both lunge'. */
final class DoneByBoth {

    private final LanguageTables tongue;
    private final List<Token> sentence;
    private final Chart<Meant> chart;

    private DoneByBoth(LanguageTables tongue, List<Token> sentence, Chart<Meant> chart) {
        this.tongue = tongue;
        this.sentence = sentence;
        this.chart = chart;
    }

    /** @param division how the sentence is taken apart */
    static Stream<Action> in(
            LanguageTables tongue, List<Token> sentence, Chart<Meant> chart, Segmentation.Division division) {
        DoneByBoth done = new DoneByBoth(tongue, sentence, chart);
        return division.pieces().stream()
                .filter(piece -> !piece.features().has("deny"))
                .flatMap(done::in);
    }

    private Stream<Action> in(SentencePart piece) {
        Stream<Action> within = piece.kind() == SentencePart.Kind.ABOUT
                ? IntStream.range(piece.from(), piece.to())
                        .boxed()
                        .flatMap(at -> chart.from(at).stream())
                        .filter(phrase -> phrase.to() <= piece.to() && ofBoth(phrase.from(), phrase.to()))
                        .map(Phrase::meant)
                        .flatMap(DoneByBoth::actions)
                : Stream.empty();
        return ofBoth(piece.from(), piece.to()) ? Stream.concat(actions(piece.meant()), within) : Stream.empty();
    }

    private static Stream<Action> actions(List<Meant> meant) {
        return meant.stream()
                .filter(Meant.Does.class::isInstance)
                .map(Meant.Does.class::cast)
                .map(Meant.Does::action);
    }

    private boolean ofBoth(int from, int to) {
        return IntStream.range(from, to)
                .boxed()
                .flatMap(at -> tongue.lexicon().at(sentence, at).stream())
                .filter(match -> match.end() <= to)
                .map(Lexicon.Match::entry)
                .anyMatch(DoneByBoth::tellsOfBoth);
    }

    private static boolean tellsOfBoth(LexicalEntry entry) {
        return entry.category().equals("ATONCE")
                || (entry.category().equals("PERSON") && entry.features().is("who", "both"));
    }
}
