package org.drillwright.print.diagram;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.drillwright.meaning.ActionText;
import org.drillwright.model.Language;
import org.drillwright.notation.Action;
import org.drillwright.notation.Line;
import org.drillwright.notation.Utterance;
import org.drillwright.print.Told;
import org.drillwright.reading.TurnReader;
import org.drillwright.terms.Terms;
import org.drillwright.wording.Message;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What is said of a picture is grammatical in each language, and in the language's own words for it: written by hand, checked by eye. */
class CaptionsTest {

    private static String gist(String weapon, String start, String leader, String follower, String language) {
        return Pictures.of(Told.count(weapon, start, leader, follower), new Language(language))
                .get(0)
                .gist()
                .replace('\u00a0', ' ');
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            en | Leader lunges: straight thrust into the follower’s low outside line, parried by octave; the blades cross, the point misses.
            fr | Meneur, fente : coup droit dans la ligne basse du dehors du suiveur, ligne fermée par la parade d’octave ; les fers se croisent, la pointe passe à côté.
            it | Guida, affondo: botta dritta nella linea bassa esterna del compagno, linea chiusa dalla parata di ottava; i ferri si incrociano, la punta manca.
            es | Guía, fondo: golpe recto a la línea baja exterior del seguidor, línea cerrada por la parada de octava; los hierros se cruzan, la punta pasa de largo.
            de | Führender, Ausfall: gerader Stoß in die untere äußere Linie des Folgenden, pariert mit Oktav; die Klingen kreuzen sich, die Spitze geht vorbei.
            """)
    void a_thrust_that_octave_parries(String language, String said) {
        assertEquals(
                said,
                gist(
                        "foil",
                        "On guard in sixte, blades apart, at lunge distance.",
                        "Straight thrust to the low outside line with a lunge.",
                        "Parry octave.",
                        language));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            en | Leader steps forward: feint by straight cut at the follower’s head, drawing quinte.
            fr | Meneur, marche : feinte par coup de tranchant direct à la tête du suiveur, qui attire la parade de quinte.
            it | Guida, passo avanti: finta con colpo dritto di taglio alla testa del compagno, che attira la parata di quinta.
            es | Guía, marcha: finta por golpe de filo directo a la cabeza del seguidor, que provoca la parada de quinta.
            de | Führender, Schritt vor: Finte (Hieb) auf den Kopf des Folgenden, provoziert Quint.
            """)
    void a_feint_at_the_head(String language, String said) {
        assertEquals(
                said,
                gist(
                        "sabre",
                        "On guard in tierce, blades apart, at advance-lunge distance.",
                        "Advance, feint a cut to the head.",
                        "Parry quinte.",
                        language));
    }

    /** The names of strokes, steps and lines, each with what the reader has to make of it. */
    private static Map<String, String> names(Language language) {
        Map<String, String> names = new TreeMap<>();
        Map<String, String> own = Map.ofEntries(
                Map.entry("role.attack", "strike attack"),
                Map.entry("role.riposte", "strike riposte"),
                Map.entry("role.counter.riposte", "strike counter-riposte"),
                Map.entry("role.remise", "strike remise"),
                Map.entry("role.redouble", "strike redouble"),
                Map.entry("role.reprise", "strike reprise"),
                Map.entry("role.stop", "strike stop"),
                Map.entry("role.counter.time", "strike counter-time"),
                Map.entry("role.extension", "strike extension direct"),
                Map.entry("role.feint", "strike attack feint"),
                Map.entry("way.cut", "strike attack direct cut"),
                Map.entry("move.lunge", "lunge"),
                Map.entry("move.forward", "step advance 1"),
                Map.entry("move.back", "step retreat 1"),
                Map.entry("move.jump.forward", "step jump-forward 1"),
                Map.entry("move.jump.back", "step jump-back 1"),
                Map.entry("move.cross.forward", "step cross-forward 1"),
                Map.entry("move.cross.back", "step cross-back 1"),
                Map.entry("move.fleche", "lunge fleche"),
                Map.entry("gesture.salute", "salute"),
                Map.entry("gesture.beat", "blade beat"),
                Map.entry("gesture.gives.high", "invite high"),
                Map.entry("gesture.gives.low", "invite low"));
        own.forEach((key, action) -> names.put(Message.of(Caption.class, key).in(language.locale()), action));
        List.of(Action.Path.DISENGAGE, Action.Path.CUT_OVER, Action.Path.COUNTER_DISENGAGE, Action.Path.ONE_TWO)
                .forEach(path -> names.put(
                        Terms.of(path).in(language.locale()),
                        "strike attack "
                                + path.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-')));
        String thrust = Terms.of(Action.Path.DIRECT).in(language.locale());
        for (Line line : List.of(Line.HIGH_INSIDE, Line.HIGH_OUTSIDE, Line.LOW_INSIDE, Line.LOW_OUTSIDE)) {
            names.put(
                    thrust + " " + Terms.of(line).in(language.locale(), "into"),
                    "strike attack direct " + Terms.of(line).english().replace(" line", ""));
        }
        return names;
    }

    @ParameterizedTest
    @MethodSource("org.drillwright.model.Language#all")
    void each_name_is_read_as_what_it_names(Language language) {
        List<String> otherwise = new ArrayList<>();
        names(language).forEach((name, action) -> {
            Utterance read = TurnReader.standard().read(name, language.word());
            List<String> actions = read.actions().stream().map(ActionText::of).toList();
            if (!read.isRead() || !actions.equals(List.of(action))) {
                otherwise.add(name + " -> " + actions);
            }
        });
        assertEquals(List.of(), otherwise);
    }
}
