package org.drillwright.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.drillwright.docs.TermSources.Row;
import org.drillwright.meaning.ActionText;
import org.drillwright.model.Side;
import org.drillwright.model.Weapon;
import org.drillwright.notation.Action.ParryKind;
import org.drillwright.notation.Action.Path;
import org.drillwright.notation.Line;
import org.drillwright.notation.Measure;
import org.drillwright.notation.Position;
import org.drillwright.notation.Target;
import org.drillwright.reading.TurnReader;
import org.drillwright.terms.Terms;
import org.drillwright.wording.Message;
import org.junit.jupiter.api.Test;

/** No term is said in any language without a source, or the word that there is none; and each is understood where it is said. */
class TermSourcesTest {

    private static final TermSources TERMS = TermSources.read();
    private static final TurnReader READER = TurnReader.standard();

    @Test
    void every_term_has_a_row() {
        assertEquals(
                Stream.of(
                                keys("side", Side.values()),
                                keys("line", Line.values()),
                                keys("position", Position.values()),
                                keys("parry", ParryKind.values()),
                                keys("path", Path.values()),
                                keys("measure", Measure.values()),
                                keys("target", Target.values()),
                                keys("weapon", Weapon.values()))
                        .flatMap(keys -> keys)
                        .toList(),
                TERMS.rows().stream().filter(Row::ofBundle).map(Row::key).toList());
    }

    private static Stream<String> keys(String kind, Enum<?>[] all) {
        return Stream.of(all)
                .map(one -> kind + "." + one.name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }

    @Test
    void a_term_is_said_as_its_source_has_it() {
        assertEquals(
                List.of(),
                notSo(
                        Row::ofBundle,
                        (row, tag, word) ->
                                word.equals(Message.of(Terms.class, row.key()).in(Locale.forLanguageTag(tag)))));
    }

    @Test
    void every_code_is_told_and_every_source_is_used() {
        Set<String> used = TERMS.rows().stream()
                .flatMap(row -> row.cells().stream())
                .flatMap(TermSources.Cell::codes)
                .collect(Collectors.toSet());
        assertEquals(TERMS.sources().keySet(), used);
    }

    @Test
    void a_word_of_the_trade_alone_is_read_as_its_action() {
        assertEquals(
                List.of(),
                notSo(
                        row -> !row.ofBundle() && !row.key().equals("no action"),
                        (row, tag, word) -> row.key()
                                .equals(READER.read(word, tag).actions().stream()
                                        .map(ActionText::of)
                                        .collect(Collectors.joining("; ")))));
    }

    @Test
    void a_measure_is_read_as_a_distance() {
        assertEquals(
                List.of(),
                notSo(
                        row -> row.key().startsWith("measure."),
                        (row, tag, word) -> READER.cue(word, tag)
                                .map(cue -> "measure." + cue)
                                .equals(Optional.of(row.key()))));
    }

    private interface Claim {
        boolean holds(Row row, String tag, String word);
    }

    /** The words of which a claim does not hold. */
    private static List<String> notSo(Predicate<Row> which, Claim claim) {
        return TERMS.rows().stream()
                .filter(which)
                .flatMap(row -> IntStream.range(0, TermSources.LANGUAGES.size())
                        .filter(at -> !claim.holds(
                                row,
                                TermSources.LANGUAGES.get(at),
                                row.cells().get(at).word()))
                        .mapToObj(at -> row.key() + ": " + row.cells().get(at).word()))
                .toList();
    }
}
