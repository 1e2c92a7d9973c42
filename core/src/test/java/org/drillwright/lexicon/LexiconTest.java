package org.drillwright.lexicon;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Word lists as docs/language.md of core tells them, in small tables of their own. A form of the program; no fact of the trade. */
class LexiconTest {

    private final Lexicon english = LexiconFile.read(List.of(
            "paradigm V (.*)e base=$0 3=$0s ing=$1ing past=$0d pp=$0d",
            "paradigm V (.*)y base=$0 3=$1ies ing=$0ing past=$1ied",
            "paradigm V .* base=$0 3=$0s ing=$0ing past=$0ed",
            "paradigm N|MARK .* sg=$0 pl=$0s/$0es",
            "paradigm odd .* base=$0",
            "forms base 3 ing past pp",
            "verbs VS",
            "whole don't do not",
            "V lunge|parry c=LUNGE # a remark",
            "V put_on c=DON",
            "V take par=take/takes/taking/took/taken;took c=TAKE",
            "VS hold sep=out",
            "MARK pad c=PAD",
            "N wall_pad",
            "MANNER softly|at_once",
            "ODD thing par=odd",
            "ADV back par=inv dir=back"));

    private final Lexicon spanish = LexiconFile.read(List.of(
            "forms base 3 ing",
            "enclitic se",
            "enclitic nos s",
            "enclitic lo",
            "V tirar par=tire/tira/tirando",
            "V pongamos par=pongamos/pone/poniendo",
            "N hombre",
            "N pase"));

    private static Set<String> entries(Lexicon lexicon, String words) {
        return lexicon.entries(words).stream()
                .map(entry -> entry.category() + " " + entry.features())
                .collect(Collectors.toSet());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            lunge     | V c=LUNGE form=base
            Lunges    | V c=LUNGE form=3
            lunging   | V c=LUNGE form=ing
            parries   | V c=LUNGE form=3
            parried   | V c=LUNGE form=past
            puts on   | V c=DON form=3
            puting on | V c=DON form=ing
            putting on |
            taking    | V c=TAKE form=ing
            taken     | V c=TAKE form=pp
            holds     | VS form=3 sep=out
            pads      | MARK c=PAD num=pl
            pades     | MARK c=PAD num=pl
            pad       | MARK c=PAD
            wall pads | N num=pl
            walls pad |
            at once   | MANNER
            thing     | ODD num=base
            back      | ADV dir=back
            backs     |
            """)
    void a_word_is_known_in_its_forms(String words, String entry) {
        assertEquals(
                entry == null ? Set.of() : Set.of(entry.strip()),
                entries(english, words).stream().map(String::strip).collect(Collectors.toSet()));
    }

    @Test
    void one_form_may_be_two() {
        assertEquals(Set.of("V c=TAKE form=past", "V c=TAKE form=pp"), entries(english, "took"));
    }

    @Test
    void senses_of_one_word_and_of_several_begin_at_a_token() {
        List<Token> words = english.words("put on softly at once");
        assertEquals(
                List.of(2),
                english.at(words, 0).stream().map(Lexicon.Match::end).toList());
        assertEquals(
                List.of(5),
                english.at(words, 3).stream().map(Lexicon.Match::end).toList());
        assertEquals(List.of(), english.at(words, 1));
        assertEquals(List.of(), english.at(words, 4));
    }

    @Test
    void what_is_listed_alone() {
        assertTrue(english.lists("lunging"));
        assertFalse(english.lists("once"));
        assertTrue(english.single().containsAll(Set.of("softly", "back", "took")));
        assertFalse(english.single().contains("put on"));
    }

    @Test
    void the_forms_of_an_entry_by_their_names() {
        Map<String, String> take = english.forms().entrySet().stream()
                .filter(one -> one.getKey().lemma().equals("take"))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElseThrow();
        assertEquals(Map.of("base", "take", "3", "takes", "ing", "taking", "past", "took", "pp", "taken"), take);
    }

    /** A school's own verb is inflected as the known one that it stands for. */
    @Test
    void a_new_verb_is_inflected_as_a_known_one() {
        assertEquals(
                Map.of("whizze up", "lunge", "whizzes up", "lunges", "whizzing up", "lunging", "whizzed up", "lunged"),
                english.inflected("Whizze up", " lunge"));
        assertEquals(Map.of(), english.inflected("whizz", "softly"));
        assertEquals(Map.of(), english.inflected("", "lunge"));
    }

    @ParameterizedTest
    @CsvSource({
        "tirese, tire se",
        "tirando, tirando",
        "tirandoselo, tirando se lo",
        "pongamonos, pongamos nos",
        "tirase, tirase",
        "hombrese, hombrese",
        "se, se",
        "tireseloen, tireseloen",
        "tireselose, tireselose"
    })
    void pronouns_written_as_one_with_the_verb(String word, String parts) {
        assertEquals(parts, spanish.words(word).stream().map(Token::folded).collect(Collectors.joining(" ")));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "lunge",
                "V",
                "verb lunge",
                "V lunge c=X c=Y",
                "V lunge par=none",
                "paradigm V .* base",
                "paradigm V .* =x",
                "V lunge|lunge",
                "V lunge =x"
            })
    void a_line_that_cannot_be_used_is_named(String line) {
        IllegalArgumentException refused =
                assertThrows(IllegalArgumentException.class, () -> LexiconFile.read(List.of(line)));
        assertTrue(refused.getMessage().contains(line), refused.getMessage());
    }

    @Test
    void a_line_that_stands_twice_is_refused() {
        assertThrows(IllegalArgumentException.class, () -> LexiconFile.read(List.of("N pad", "N pad  # again")));
    }

    @Test
    void words_written_as_one_are_told_in_reverse() {
        Lexicon french = LexiconFile.read(List.of("whole au a le", "leading l' le", "trailing 's s"));
        assertEquals(Map.of("au", List.of("a", "le"), "l'", List.of("le")), french.clitics());
    }

    @Test
    void features_are_united_unless_they_contradict() {
        Features high = Features.parse(List.of("h=high", "opp"));
        Features low = Features.parse(List.of("h=low"));
        Features inside = Features.parse(List.of("w=inside"));
        assertEquals(Optional.empty(), high.and(low));
        assertEquals("h=high opp w=inside", high.and(inside).orElseThrow().toString());
        assertEquals(inside, inside.and(Features.NONE).orElseThrow());
        assertEquals(inside, Features.NONE.and(inside).orElseThrow());
        assertEquals("h=low opp", high.overlaidBy(low).toString());
        assertEquals(high, high.overlaidBy(Features.NONE));
        assertEquals(high, Features.NONE.overlaidBy(high));
        assertEquals("a=1 h=high opp", high.with("a", "1").toString());
        assertEquals("opp", high.without("h").toString());
        assertEquals("h=high", high.without("opp").toString());
        assertEquals(high, high.without("x"));
        assertTrue(low.without("h").isEmpty());
        assertFalse(low.isEmpty());
        assertEquals(List.of("h", "opp"), high.names());
        assertTrue(high.has("opp") && high.is("h", "high") && !high.is("h", "low") && !high.has("w"));
        assertEquals(Optional.of("high"), high.get("h"));
        assertEquals(Optional.empty(), high.get("w"));
        assertEquals(high.hashCode(), Features.parse(List.of("opp", "h=high")).hashCode());
        assertFalse(high.equals(low));
    }

    @Test
    void a_feature_is_renamed_by_another() {
        Features sep = Features.parse(List.of("sep=out", "c=X"));
        assertEquals(
                "c=X was=out",
                sep.renamedBy(Features.parse(List.of("was=$sep"))).toString());
        assertEquals(
                "c=Y sep=out",
                sep.renamedBy(Features.parse(List.of("c=Y", "no=$none"))).toString());
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
            h=high|low,opp      ; h=high opp   ; true
            h                    ; h=high       ; true
            h                    ; opp          ; false
            !h                   ; opp          ; true
            !h                   ; h=high       ; false
            !h=high              ; h=low        ; true
            !h=high              ; h=high       ; false
            h=mid                ; h=high       ; false
            h,w                  ; h=high       ; false
            """)
    void a_condition_holds_or_not(String condition, String features, boolean holds) {
        assertEquals(holds, Condition.parse(condition).holds(Features.parse(List.of(features.split(" ")))));
    }

    @Test
    void a_condition_asks_for_what_has_to_be_there() {
        Condition condition = Condition.parse("h=high,!w");
        assertTrue(condition.asks("h"));
        assertFalse(condition.asks("w") || condition.asks("x"));
        assertEquals(2, condition.tests().size());
        assertTrue(Condition.NONE.holds(Features.NONE));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "!", "h=high=low", "h|w=high"})
    void no_condition(String text) {
        assertThrows(IllegalArgumentException.class, () -> Condition.parse(text));
    }
}
