package org.drillwright.grammar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.drillwright.lexicon.Features;
import org.drillwright.lexicon.Lexicon;
import org.drillwright.lexicon.LexiconFile;
import org.drillwright.lexicon.Token;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Constructions as docs/language.md of core tells them, in a small table of their own. A form of the program; no fact of the trade. */
class ChartTest {

    private final Lexicon lexicon = LexiconFile.read(List.of(
            "forms base 3 ing pp zu",
            "V hit par=hit/hits/hitting/hit/tohit c=HIT",
            "V step par=step/steps/stepping/stepped/tostep c=STEP",
            "verbs VS",
            "VS lay par=lay/lays/laying/laid/tolay c=LAY sep=off",
            "SEPW off sep=off",
            "SEPW down sep=down",
            "ACTN lunge c=LUNGE",
            "POS quarte|fourth pos=quarte",
            "POS sixte pos=sixte",
            "H high h=high",
            "H low h=low",
            "W inside w=inside",
            "MARK pad|wall m=pad",
            "ADV back dir=back",
            "P to r=to",
            "P with r=with",
            "P in r=in",
            "PERSON he who=other",
            "MANNER softly",
            "ACTN thelunge c=LUNGE dt",
            "ACTN hislunge c=LUNGE who=other",
            "DET the"));

    private final Grammar grammar = Grammar.read(List.of(
            "noun POS AIM MARK",
            "late AIM",
            "final zu",
            "head VSP",
            "AIM -> H W @.5",
            "AIM -> H",
            "AIM -> W => h=mid",
            "MARK -> DET- MARK",
            "MANNER -> MANNER MANNER",
            "VSP -> VS",
            "VP -> VSP SEPW => was=$sep @.2",
            "S -> PERSON ACT[form=3] => told",
            "NOTE -> 'in- POS- => held",
            "QUIET -> PERSON- MANNER => acts=none",
            "STAND -> POS ,- POS- => means=STAND",
            "DONE -> ACT[form=base] MANNER- => form=having @2",
            "CARRY -> PERSON- ACT[form=3]+ => form=base",
            "GIVES -> VP ADV>way-",
            "BOTH -> VP AIM>to",
            "WRITTEN -> 'coupé-",
            "P -> 'up- P @.4",
            "TURNS -> 'turn- => acts=turn",
            "WRAP -> QUIET ACT",
            "THREE -> 'so- MANNER- 'turn-"));

    /** Frames that say of every head what it took: {@code hit(obj:AIM h=high)}; no head takes two of one relation, none takes 'way'. */
    private static final class Said implements Sense<String> {
        @Override
        public boolean mayTake(Features head, List<Argument<String>> arguments) {
            List<String> relations = arguments.stream().map(Argument::relation).toList();
            return relations.stream().distinct().count() == relations.size();
        }

        @Override
        public List<Sensed<String>> of(Features head, List<Argument<String>> arguments) {
            String concept = head.get("c").orElse("?").toLowerCase(Locale.ROOT);
            return concept.equals("lay") && !head.has("was")
                    ? List.of()
                    : List.of(new Sensed<>(
                            List.of(concept
                                    + arguments.stream()
                                            .map(one -> one.relation() + ":" + one.sort() + " " + one.features())
                                            .sorted()
                                            .toList()),
                            0.1));
        }

        @Override
        public List<String> named(String name) {
            return name.equals("turn") ? List.of("turned") : List.of();
        }

        @Override
        public List<String> had(List<String> meant) {
            return meant.stream().map(one -> "had " + one).toList();
        }
    }

    private List<Phrase<String>> whole(String text) {
        List<Token> words = lexicon.words(text);
        return Chart.of(lexicon, grammar, new Said(), words).from(0).stream()
                .filter(phrase -> phrase.to() == words.size())
                .toList();
    }

    /** The phrases of a category that are the whole text: what they say, mean and cost. */
    private List<String> whole(String category, String text) {
        return whole(text).stream()
                .filter(phrase -> phrase.category().equals(category))
                .map(phrase ->
                        String.format(Locale.ROOT, "%s %s %.1f", phrase.features(), phrase.meant(), phrase.weight()))
                .map(String::strip)
                .sorted()
                .toList();
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
            AIM    ; high inside             ; h=high w=inside [] 0.5
            AIM    ; high                    ; h=high [] 1.0
            AIM    ; inside                  ; h=mid w=inside [] 1.0
            AIM    ; high low                ;
            NP     ; quarte                  ; pos=quarte s=POS [] 0.0
            NP     ; the pad                 ; m=pad s=MARK [] 1.0
            MARK   ; the the pad             ; m=pad [] 2.0
            ACT    ; hit                     ; c=HIT form=base [hit[]] 0.1 / c=HIT form=pp [hit[]] 0.1
            ACT    ; lunge                   ; c=LUNGE form=n [lunge[]] 0.6
            ACT    ; steps high              ; c=STEP form=3 [step[obj:AIM h=high]] 1.4
            ACT    ; steps to quarte         ; c=STEP form=3 [step[to:POS pos=quarte]] 0.4
            ACT    ; steps back to quarte    ; c=STEP form=3 [step[adv:ADV dir=back, to:POS pos=quarte]] 0.7
            ACT    ; steps, high             ; c=STEP cm form=3 [step[obj:AIM h=high]] 2.4
            ACT    ; steps, quarte           ;
            ACT    ; steps, to quarte        ; c=STEP cm form=3 [step[to:POS pos=quarte]] 1.4
            ACT    ; with quarte steps       ; c=STEP form=3 [step[with:POS pos=quarte]] 1.3
            ACT    ; to quarte steps         ;
            ACT    ; to quarte tostep        ; c=STEP form=zu [step[to:POS pos=quarte]] 0.4
            ACT    ; quarte tostep           ; c=STEP form=zu [step[obj:POS pos=quarte]] 0.4
            S      ; quarte steps            ; c=STEP form=3 th [step[subj:POS pos=quarte]] 0.6
            S      ; he steps back           ; c=STEP form=3 told who=other [step[adv:ADV dir=back]] 1.4
            NP     ; stepping back           ; c=STEP form=ing s=GER [step[adv:ADV dir=back]] 0.4
            ACT    ; lays quarte off         ; c=LAY form=3 [lay[obj:POS pos=quarte]] 1.6
            ACT    ; lays quarte             ;
            ACT    ; lays quarte down        ;
            NOTE   ; in quarte               ; held [] 1.0
            QUIET  ; he softly               ; acts=none [] 1.0
            STAND  ; quarte, sixte           ; pos=quarte [stand[]] 1.1
            DONE   ; step softly             ; c=STEP form=having [had step[]] 2.1
            CARRY  ; he steps                ; form=base [step[]] 1.1
            ACT    ; thelunge                ; c=LUNGE dt form=n [lunge[]] 0.6
            ACT    ; hislunge                ; c=LUNGE form=n who=other [lunge[]] 0.6
            ACT    ; steps up to quarte      ; c=STEP form=3 [step[to:POS pos=quarte]] 0.8
            S      ; quarte step             ; c=STEP form=base th [step[subj:POS pos=quarte]] 0.6
            S      ; quarte stepping         ;
            WRITTEN ; coupé                  ; [] 1.0
            WRITTEN ; coupe                  ;
            TURNS  ; turn                    ; acts=turn [turned] 1.0
            WRAP   ; he softly step          ; c=STEP form=base [step[]] 2.1
            THREE  ; so softly turn          ; [] 1.0
            THREE  ; so softly so            ;
            MANNER ; softly softly softly    ; [] 2.0
            """)
    void a_phrase_says_means_and_costs(String category, String text, String said) {
        assertEquals(said == null ? "" : said, String.join(" / ", whole(category, text)));
    }

    @Test
    void an_argument_may_be_part_of_a_construction() {
        assertEquals(
                List.of("to"),
                whole("step high").stream()
                        .filter(phrase -> phrase.category().equals("BOTH"))
                        .flatMap(phrase -> phrase.arguments().stream())
                        .map(Argument::relation)
                        .toList());
    }

    /** Of one category and stretch only the cheapest are kept, and of equal ones the cheaper. */
    @Test
    void only_so_many_phrases_are_kept() {
        List<String> senses = new ArrayList<>(IntStream.range(0, 20)
                .mapToObj(at -> "A -> X[n=" + at + "] Y => v=" + at + " @" + (20 - at))
                .toList());
        senses.add("A -> X[n=19] Y => v=19 @30");
        List<String> words = new ArrayList<>(
                IntStream.range(0, 20).mapToObj(at -> "X xs n=" + at).toList());
        words.add("Y ys");
        Lexicon lexicon = LexiconFile.read(words);
        List<Phrase<String>> kept =
                Chart.of(lexicon, Grammar.read(senses), new Said(), lexicon.words("xs ys")).from(0).stream()
                        .filter(phrase -> phrase.category().equals("A"))
                        .toList();
        assertEquals(14, kept.size());
        assertEquals(1, kept.stream().mapToDouble(Phrase::weight).min().orElseThrow());
        assertEquals(14, kept.stream().mapToDouble(Phrase::weight).max().orElseThrow());
    }

    @Test
    void a_head_takes_six_arguments_at_most() {
        Lexicon lexicon = LexiconFile.read(List.of(
                "forms base",
                "paradigm V .* base=$0",
                "V go c=GO",
                "X xs",
                "P a r=a",
                "P b r=b",
                "P c r=c",
                "P d r=d",
                "P e r=e",
                "P f r=f",
                "P g r=g"));
        Grammar grammar = Grammar.read(List.of("noun X"));
        assertTrue(acts(lexicon, grammar, "go a xs b xs c xs d xs e xs f xs"));
        assertEquals(false, acts(lexicon, grammar, "go a xs b xs c xs d xs e xs f xs g xs"));
    }

    private static boolean acts(Lexicon lexicon, Grammar grammar, String text) {
        List<Token> words = lexicon.words(text);
        return Chart.of(lexicon, grammar, new Said(), words).from(0).stream()
                .anyMatch(phrase -> phrase.category().equals("ACT") && phrase.to() == words.size());
    }

    @Test
    void a_grammar_tells_what_it_is_made_of() {
        Grammar grammar = Grammar.read(List.of("noun POS", "A -> B 'and- C[x]- => y", "C -> ,- B>to"));
        assertEquals(List.of("A -> B 'and- C[x]- => y", "C -> ,- B>to"), grammar.lines());
        assertEquals(
                List.of("A", "B", "C", "POS"),
                grammar.categories().stream().sorted().collect(Collectors.toList()));
        assertTrue(grammar.names("and") && grammar.names(",") && !grammar.names("B"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"A B", "A ->", "A -> => x", "A -> B[x", "A -> B => x x", "A -> B @y"})
    void a_line_that_is_no_rule_is_refused(String line) {
        assertThrows(RuntimeException.class, () -> Grammar.read(List.of(line)));
    }
}
