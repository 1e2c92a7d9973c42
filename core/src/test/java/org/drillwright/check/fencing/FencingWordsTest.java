package org.drillwright.check.fencing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.drillwright.check.Judged;
import org.drillwright.check.Rule;
import org.drillwright.check.jury.Judge;
import org.drillwright.check.jury.Rules;
import org.drillwright.model.Language;
import org.drillwright.notation.Action;
import org.drillwright.notation.Aim;
import org.drillwright.notation.Position;
import org.drillwright.notation.Stance;
import org.drillwright.notation.Utterance;
import org.drillwright.reading.TurnReader;
import org.drillwright.source.Finding;
import org.drillwright.terms.Terms;
import org.drillwright.wording.Message;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What the rules of this room say in other languages; agreement and contractions by each language's grammar, from memory. */
class FencingWordsTest {

    private static final TurnReader READER = TurnReader.standard();

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            attack-into-closed-line | fr | L’action va dans la ligne haute du dehors, mais le suiveur est en sixte, qui ferme cette ligne.
            attack-into-closed-line | it | L’azione va nella linea alta esterna, ma il compagno è in sesta, che chiude questa linea.
            attack-into-closed-line | es | La acción va a la línea alta exterior, pero el seguidor está en sexta, que cierra esa línea.
            attack-into-closed-line | de | Die Aktion geht in die obere äußere Linie, aber der Folgende steht in der Sixt, die diese Linie schließt.
            foot-before-hand | fr | Le bras s’allonge au temps 2, après que le pied s’est fendu.
            foot-before-hand | it | Il braccio si distende al tempo 2, dopo che il piede è già in affondo.
            foot-before-hand | es | El brazo se extiende en el tiempo 2, después de que el pie haya ido a fondo.
            foot-before-hand | de | Der Arm streckt sich auf Zahl 2, nachdem der Fuß schon im Ausfall steht.
            mask-off-in-reach | fr | Une pointe vise le suiveur, qui n’a pas son masque.
            mask-off-in-reach | it | Una punta è rivolta al compagno, che è senza maschera.
            mask-off-in-reach | es | Una punta va dirigida al seguidor, que no lleva la careta.
            mask-off-in-reach | de | Eine Spitze zielt auf den Folgenden, der keine Maske trägt.
            off-target | fr | La cuisse ne fait pas partie de la surface valable du sabre.
            off-target | it | La coscia non fa parte del bersaglio valido della sciabola.
            off-target | es | El muslo no forma parte del blanco válido del sable.
            off-target | de | Der Oberschenkel gehört nicht zur Trefffläche des Säbels.
            """)
    void what_is_the_matter(String rule, String language, String said) {
        assertEquals(said, first(rule).what().in(Locale.forLanguageTag(language)));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            attack-into-closed-line | fr | Visez la ligne haute du dedans, la ligne basse du dedans ou la ligne basse du dehors.
            attack-into-closed-line | it | Mirate alla linea alta interna, alla linea bassa interna o alla linea bassa esterna.
            attack-into-closed-line | es | Apunte a la línea alta interior, a la línea baja interior o a la línea baja exterior.
            attack-into-closed-line | de | Auf die obere innere Linie, die untere innere Linie oder die untere äußere Linie zielen.
            parry-misses | fr | Depuis la sixte, on ferme cette ligne par quarte (parade simple) ou contre de sixte.
            parry-misses | it | Da sesta questa linea si chiude con quarta (parata semplice) o contro di sesta.
            parry-misses | es | Desde sexta, esa línea se cierra con cuarta (parada simple) o contra de sexta.
            parry-misses | de | Aus der Sixt schließt man diese Linie mit Quart (einfache Parade) oder Kreisparade Sixt.
            """)
    void what_may_be_done(String rule, String language, String said) {
        String wayOut = first(rule).wayOut().in(Locale.forLanguageTag(language));
        assertTrue(wayOut.startsWith(said), wayOut);
    }

    /** A French article is elided before a vowel, an Italian one too. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            fr | OCTAVE | SEPTIME | D’octave en septime, c’est une parade simple, et non une parade circulaire.
            it | OCTAVE | SEPTIME | Da ottava a settima è una parata semplice, non una parata di contro.
            de | OCTAVE | SEPTIME | Von Oktav nach Septim ist es eine einfache Parade, keine Kreisparade.
            es | SIXTE | QUARTE | De sexta a cuarta es una parada simple, no una parada circular.
            """)
    void kinds_of_parry(String language, Position from, Position to, String said) {
        Message kind = Message.of(
                ParryMisses.class,
                "parry-misses.kind",
                Terms.of(from),
                Terms.of(to),
                Terms.of(Action.ParryKind.SIMPLE),
                Terms.of(Action.ParryKind.CIRCULAR));
        assertEquals(said, kind.capital().in(Locale.forLanguageTag(language)));
    }

    static Stream<Rule> rules() {
        return Rules.ALL.stream().filter(rule -> rule.getClass().getPackage().equals(ParryMisses.class.getPackage()));
    }

    @ParameterizedTest
    @MethodSource("rules")
    void each_says_what_it_asks_and_why_in_every_language(Rule rule) {
        for (Language language : others()) {
            for (Message one : List.of(rule.text().asks(), rule.text().why())) {
                assertFalse(one.in(language.locale()).isBlank());
                assertNotEquals(one.english(), one.in(language.locale()), language.word());
            }
        }
    }

    /** Whoever reads the advice, what is to be typed is in the language of the drill. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            Extend to the high inside line and lunge. | Hold on guard. | en | say so: "take the touch"
            Extend to the high inside line and lunge. | Hold on guard. | fr | « take the touch »
            Fendez-vous dans la ligne haute intérieure. | Ne bougez pas. | en | say so: "recevez la touche"
            Fendez-vous dans la ligne haute intérieure. | Ne bougez pas. | de | „recevez la touche“
            """)
    void what_is_to_be_typed_is_in_the_drills_language(String attack, String answer, String reader, String said) {
        Judged judged = Judged.drill("""
                steps:
                  - leader: %s
                    follower: %s
                    distance: lunge
                """.formatted(attack, answer));
        String wayOut = Judge.drill(judged.subject()).stream()
                .filter(finding -> finding.rule().equals("attack-unanswered"))
                .findFirst()
                .orElseThrow()
                .wayOut()
                .in(Locale.forLanguageTag(reader));
        assertTrue(wayOut.contains(said.replace('"', '\'')), wayOut);
    }

    /** What somebody is told to write is read in that language, and as what it is meant to be. */
    static Map<String, List<Action>> toBeWritten() {
        return Map.of(
                "typed.take", List.of(new Action.Answer(Action.Reply.RECEIVE, Stance.UNSTATED)),
                "typed.acknowledge", List.of(new Action.Aside(Action.Trifle.ACKNOWLEDGE)),
                "typed.return", List.of(new Action.OnGuard(Stance.UNSTATED)),
                "typed.masks-on", List.of(new Action.Mask(true)),
                "typed.step-back", List.of(new Action.Withdraw(), new Action.Mask(false)));
    }

    @ParameterizedTest
    @MethodSource("written")
    void what_is_to_be_written_is_read(String key, List<Action> meant) {
        for (Language language : others()) {
            String said = Message.of(ParryMisses.class, key).in(language.locale());
            assertEquals(meant, read(said, language), said);
        }
    }

    static Stream<Object[]> written() {
        return toBeWritten().entrySet().stream().map(one -> new Object[] {one.getKey(), one.getValue()});
    }

    @ParameterizedTest
    @CsvSource({"SIXTE", "QUARTE", "OCTAVE"})
    void a_circular_parry_is_read_as_it_is_to_be_written(Position position) {
        for (Language language : others()) {
            String said = Message.of(ParryMisses.class, "typed.circular", Terms.of(position))
                    .in(language.locale());
            Action meant = new Action.Parry(Optional.of(position), Action.ParryKind.CIRCULAR, Aim.UNSTATED, false);
            assertEquals(List.of(meant), read(said, language), said);
        }
    }

    private static List<Action> read(String said, Language language) {
        Utterance read = READER.read(said, language.word());
        assertTrue(read.isRead(), said);
        return read.actions();
    }

    private static Finding first(String rule) {
        String breaks = Rules.text(rule).orElseThrow().breaks();
        return Judge.drill(Judged.drill(breaks).subject()).stream()
                .filter(finding -> finding.rule().equals(rule))
                .findFirst()
                .orElseThrow();
    }

    private static List<Language> others() {
        return Language.all().stream()
                .filter(language -> !language.equals(Language.ENGLISH))
                .toList();
    }
}
