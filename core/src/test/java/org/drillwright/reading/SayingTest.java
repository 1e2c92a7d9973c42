package org.drillwright.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drillwright.lexicon.Spelling;
import org.drillwright.meaning.ActionText;
import org.drillwright.meaning.Meant;
import org.drillwright.notation.Action;
import org.drillwright.notation.Utterance;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Actions in words of the trade, and back. Facts of language are common practice, no source. */
class SayingTest {

    private static final TurnReader READER = TurnReader.standard();

    private static Action action(String text) {
        return ((Meant.Does) ActionText.read(text).get(0)).action();
    }

    private static List<Action> actions(String texts) {
        return Arrays.stream(texts.split(";")).map(SayingTest::action).toList();
    }

    static Stream<String> tags() {
        return READER.tags().stream();
    }

    static Stream<List<String>> said() throws IOException {
        try (InputStream file = Objects.requireNonNull(SayingTest.class.getResourceAsStream("/reading/said.tsv"))) {
            return new String(file.readAllBytes(), StandardCharsets.UTF_8)
                            .lines()
                            .filter(line -> !line.startsWith("#"))
                            .map(line -> List.of(line.split("\t")))
                            .toList()
                            .stream();
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("said")
    void an_action_is_said_in_the_words_of_the_trade(List<String> row) {
        assertEquals(Optional.of(row.get(2)), READER.said(action(row.get(1)), row.get(0)));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("tags")
    void what_is_said_is_read_as_just_the_action(String tag) {
        List<String> other = new ArrayList<>();
        for (Action action : SayableActions.all()) {
            String said = READER.said(action, tag).orElse("nothing");
            Utterance read = READER.read(said);
            if (!read.isRead() || !read.actions().equals(List.of(action))) {
                other.add(ActionText.of(action) + " -> " + said + " -> "
                        + read.actions().stream().map(ActionText::of).toList());
            }
        }
        assertEquals(List.of(), other);
    }

    /** What was read is told to the instructor, in the drill's language and in others; never as the specifications write it. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("tags")
    void whatever_the_specification_reads_has_words(String tag) {
        Set<String> wordless = new TreeSet<>();
        for (String other : READER.tags()) {
            Expectation.of(other + ".tsv").stream()
                    .filter(row -> row.alternatives().stream()
                            .noneMatch(actions -> actions.stream().allMatch(text -> isSaid(text, tag))))
                    .forEach(row -> wordless.add(row.alternatives() + " <- " + row.sentence()));
        }
        assertEquals(Set.of(), wordless);
    }

    /** As it stands or, since the specification does not tell a direct stroke from one whose way is not named, as a direct one. */
    private static boolean isSaid(String text, String tag) {
        String once = eachWordOnce(text);
        return Stream.of(once, once.startsWith("strike ") ? once + " direct" : once)
                .map(SayingTest::action)
                .anyMatch(action -> action instanceof Action.Aside
                        || READER.said(action, tag).isPresent());
    }

    private static String eachWordOnce(String text) {
        return Arrays.stream(text.split(" ")).distinct().collect(Collectors.joining(" "));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            en | strike extension direct high inside; lunge   | Extend to the high inside line with a lunge.
            en | guard sixte engaged; state lunge-distance    | Come on guard in sixte, engaged, at lunge distance.
            en | parry quarte; strike riposte                 | Parry quarte, then riposte.
            en | parry quarte; strike attack cut-over         | Parry quarte. Cut over.
            fr | parry quarte; step retreat 1                 | Parez quarte en reculant d'un pas.
            fr | strike attack disengage; lunge               | Dégagez avec fente.
            fr | step advance 2; strike attack direct chest   | Marchez de deux pas, puis tirez droit à la poitrine.
            it | strike attack disengage; lunge               | Cava con un affondo.
            it | parry octave; strike riposte                 | Para ottava, poi rispondi.
            de | parry quarte; step retreat 1                 | Pariere Quart im Zurückweichen.
            de | strike attack disengage; lunge               | Umgehe mit Ausfall.
            de | step advance 2; strike attack direct chest   | Gehe zwei Schritte vor, dann stoße gerade auf die Brust.
            """)
    void several_actions_are_said_together(String tag, String texts, String sentence) {
        assertEquals(sentence, READER.said(actions(texts), tag));
    }

    /** What is left out of a sentence would be lost to whoever reads it. */
    @Test
    void what_a_language_has_no_words_for_is_not_said_by_halves() {
        Action press = action("blade press-back quarte");
        assertEquals(Optional.empty(), READER.said(press, "en"));
        assertEquals("Blade press-back quarte.", READER.said(List.of(press), "en"));
    }

    @Test
    void what_is_nothing_of_the_phrase_is_not_said() {
        assertEquals("Advance.", READER.said(actions("aside;step advance"), "en"));
        assertEquals("", READER.said(actions("aside"), "en"));
    }

    @Test
    void a_language_that_is_not_read_is_not_said() {
        assertThrows(IllegalArgumentException.class, () -> READER.said(action("lunge"), "xx"));
    }

    @ParameterizedTest
    @CsvSource({"en, Parry quarte.", "fr, Parez quarte.", "it, Para quarta.", "es, Pare cuarta.", "de, Pariere Quart."})
    void a_text_is_of_the_language_that_reads_it(String tag, String text) {
        assertEquals(tag, READER.tag(text));
    }

    @ParameterizedTest
    @MethodSource("tags")
    void every_word_is_one_that_the_reader_lists(String tag) {
        LanguageTables tongue = READER.tongues()
                .filter(one -> one.tag().equals(tag))
                .findFirst()
                .orElseThrow();
        List<String> unlisted = tongue.saying().words().stream()
                .filter(word -> tongue.lexicon().words(word).stream()
                        .anyMatch(token -> token.isWord() && !tongue.knows(token.folded())))
                .sorted()
                .toList();
        assertTrue(unlisted.stream().allMatch(word -> isPartOfCompound(tongue, word)), unlisted::toString);
    }

    private static boolean isPartOfCompound(LanguageTables tongue, String word) {
        return tongue.lexicon().forms().values().stream()
                .flatMap(forms -> forms.values().stream())
                .anyMatch(form ->
                        (" " + form + " ").contains(" " + Spelling.fold(word).replace('-', ' ') + " "));
    }
}
