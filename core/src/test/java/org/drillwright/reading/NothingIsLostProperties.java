package org.drillwright.reading;

import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import java.util.Locale;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.GenerationMode;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.drillwright.notation.Action;
import org.drillwright.notation.Utterance;

/**
 * Words of the trade told beside a whole order are never read as though they were not there: the reading changes, or a
 * word is unread, or something is left open. Orders and words: common practice, no source.
 *
 * <p>No order here has in it what is told beside it ('parry quarte, with a parry of quarte'), for that adds nothing; and
 * there is nothing here that may truly stand beside an order and change nothing: another's action ('on his parry'), what is
 * not done ('without lunging'), what is past ('after the parry'), the guard one comes from ('from sixte'), a posture ('hand
 * high').
 */
class NothingIsLostProperties {

    private static final TurnReader READER = TurnReader.standard();

    /**
     * An order, and what may be told beside it.
     *
     * @param beside words that say something else that is done, or otherwise
     */
    private record Words(List<String> orders, List<String> before, List<String> beside) {}

    private static final Words ENGLISH = new Words(
            List.of(
                    "Lunge",
                    "Extend the arm to the chest",
                    "Parry octave",
                    "Take the parry of sixte",
                    "Riposte to the flank",
                    "Advance",
                    "Recover",
                    "On guard in sixte",
                    "Press",
                    "Disengage",
                    "Cut to the head",
                    "Hold the lunge",
                    "Wait for the attack",
                    "Salute",
                    "Stop hit to the hand",
                    "P8"),
            List.of(
                    "After a step back",
                    "After stepping back",
                    "With a beat",
                    "Stepping back",
                    "While stepping back",
                    "When you step back",
                    "Once you step back",
                    "Having stepped back",
                    "From a step back",
                    "During the retreat",
                    "Starting with a beat",
                    "Masks off",
                    "Arm"),
            List.of(
                    "with a step back",
                    "by stepping back",
                    "while retreating",
                    "after a step back",
                    "after the step back",
                    "after recovering",
                    "before stepping back",
                    "during the retreat",
                    "with a beat",
                    "after a beat",
                    "off a beat",
                    "behind a beat",
                    "hand in tierce",
                    "with the hand in tierce",
                    "without contact",
                    "out of contact",
                    "parrying quarte",
                    "with a parry of quarte",
                    "and riposte low",
                    "as a false attack",
                    "halfway",
                    "three times",
                    "at lunge distance",
                    "masks off",
                    "with a jump back",
                    "taking tierce",
                    "so as to riposte",
                    "in order to parry"));

    private static final Words FRENCH = new Words(
            List.of(
                    "Fendez-vous",
                    "Allongez le bras",
                    "Parez octave",
                    "Ripostez au flanc",
                    "Marchez",
                    "En garde en sixte",
                    "Dégagez",
                    "Recevez la touche",
                    "Saluez"),
            List.of(
                    "Après un pas en arrière",
                    "Après la retraite",
                    "Pendant la retraite",
                    "En rompant",
                    "Avec un battement"),
            List.of(
                    "après un pas en arrière",
                    "après une retraite",
                    "pendant la retraite",
                    "après un battement",
                    "en rompant",
                    "avec un battement",
                    "la main en tierce",
                    "en parant quarte",
                    "avec une parade de quarte",
                    "au contact",
                    "trois fois",
                    "pour parer",
                    "pour riposter"));

    private static final Words ITALIAN = new Words(
            List.of(
                    "Affondo",
                    "Distendi il braccio",
                    "Parata di ottava",
                    "Risposta al fianco",
                    "Avanza",
                    "In guardia di sesta",
                    "Cavazione",
                    "Saluta"),
            List.of("Dopo un passo indietro", "Dopo aver indietreggiato", "Indietreggiando", "Con una battuta"),
            List.of(
                    "dopo un passo indietro",
                    "dopo una battuta",
                    "indietreggiando",
                    "con una battuta",
                    "mano in terza",
                    "con la parata di quarta",
                    "tre volte",
                    "prima di indietreggiare"));

    private static final Words SPANISH = new Words(
            List.of(
                    "Tírese a fondo",
                    "Extienda el brazo",
                    "Pare octava",
                    "Responda al flanco",
                    "Marche",
                    "En guardia de sexta",
                    "Libre",
                    "Reciba el tocado",
                    "Salude"),
            List.of(
                    "Después de un paso atrás",
                    "Después de romper",
                    "Al romper",
                    "Rompiendo",
                    "Durante el retroceso",
                    "Con un batimiento"),
            List.of(
                    "después de un paso atrás",
                    "después de romper",
                    "al romper",
                    "durante el retroceso",
                    "tras un batimiento",
                    "rompiendo",
                    "con un batimiento",
                    "la mano en tercera",
                    "parando cuarta",
                    "con una parada de cuarta",
                    "en contacto",
                    "tres veces",
                    "para parar",
                    "para responder",
                    "mientras rompe"));

    private static final Words GERMAN = new Words(
            List.of(
                    "Falle aus",
                    "Strecke den Arm",
                    "Pariere Oktav",
                    "Riposte auf die Flanke",
                    "Geh einen Schritt vor",
                    "Fechtstellung in Sixt",
                    "Umgehe",
                    "Nimm den Treffer an",
                    "Grüße",
                    "Sixtparade",
                    "Den Arm strecken"),
            List.of(
                    "Nach einem Schritt zurück",
                    "Nach dem Zurückweichen",
                    "Zurückweichend",
                    "Im Zurückweichen",
                    "Während des Schritts zurück",
                    "Mit einem Klingenschlag",
                    "Um zu parieren"),
            List.of(
                    "nach einem Schritt zurück",
                    "nach dem Zurückweichen",
                    "im Zurückweichen",
                    "während du zurückweichst",
                    "nach einem Klingenschlag",
                    "mit einem Klingenschlag",
                    "die Hand in Terz",
                    "mit einer Quartparade",
                    "indem du Quart parierst",
                    "Klingen gebunden",
                    "dreimal",
                    "um zu parieren",
                    "um zu ripostieren",
                    "ehe du zurückweichst"));

    @Provide
    Arbitrary<List<String>> told() {
        return Arbitraries.of(ENGLISH, FRENCH, ITALIAN, SPANISH, GERMAN).flatMap(words -> {
            Arbitrary<String> orders = Arbitraries.of(words.orders());
            Arbitrary<String> signs = Arbitraries.of(" ", ", ");
            Arbitrary<List<String>> behind = Combinators.combine(orders, Arbitraries.of(words.beside()), signs)
                    .as((order, beside, sign) -> List.of(order, order + sign + beside + "."));
            Arbitrary<List<String>> before = Combinators.combine(orders, Arbitraries.of(words.before()), signs)
                    .as((order, first, sign) -> List.of(order, first + sign + lower(order) + "."));
            return Arbitraries.oneOf(behind, before);
        });
    }

    private static String lower(String order) {
        return order.matches("P\\d") ? order : order.substring(0, 1).toLowerCase(Locale.ROOT) + order.substring(1);
    }

    @Property(tries = 1500, generation = GenerationMode.RANDOMIZED)
    void what_is_told_beside_an_order_is_read_or_told(@ForAll("told") List<String> told) {
        Utterance order = READER.read(told.get(0) + ".");
        Utterance more = READER.read(told.get(1));
        assertFalse(isSure(more) && done(more).equals(done(order)), () -> told.get(1) + " is read as " + done(more));
    }

    private static boolean isSure(Utterance read) {
        return read.isRead()
                && read.open().isEmpty()
                && read.clauses().stream().allMatch(clause -> clause.doubts().isEmpty());
    }

    private static List<Action> done(Utterance read) {
        return read.actions().stream()
                .filter(action -> !(action instanceof Action.Aside))
                .toList();
    }
}
