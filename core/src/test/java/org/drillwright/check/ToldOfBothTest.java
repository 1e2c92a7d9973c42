package org.drillwright.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.drillwright.meaning.ActionText;
import org.drillwright.model.Side;
import org.drillwright.notation.Action;
import org.drillwright.notation.Utterance;
import org.drillwright.reading.TurnReader;
import org.drillwright.source.Finding;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Who 'he' is in a drill that is told of both, and in one that is told to one: common practice, no source. */
class ToldOfBothTest {

    private static List<String> leader(String leader, String follower) {
        Map<Side, Utterance> turns = new EnumMap<>(Side.class);
        turns.put(Side.LEADER, TurnReader.standard().read(leader).by(Side.LEADER));
        turns.put(Side.FOLLOWER, TurnReader.standard().read(follower).by(Side.FOLLOWER));
        Script script = new Script(Utterance.NOTHING, Utterance.NOTHING, List.of(turns), Utterance.NOTHING);
        return ToldOfBoth.read(script).turn(0, Side.LEADER).actions().stream()
                .map(ActionText::of)
                .toList();
    }

    @Test
    void where_both_turns_tell_of_him_he_is_the_one_whose_turn_it_is() {
        assertEquals(List.of("lunge"), leader("He lunges.", "He parries quarte."));
        assertEquals(List.of("lunge"), leader("Il se fend.", "Le partenaire pare quarte."));
    }

    @Test
    void he_goes_on_with_all_that_he_is_told_of() {
        assertEquals(
                List.of("hold", "receive"),
                leader("Le maître reste sur place et reçoit la touche.", "Le partenaire se fend."));
        assertEquals(List.of("parry quarte"), leader("Il pare quarte.", "Il se fend et touche la poitrine."));
    }

    @Test
    void where_the_other_turn_is_an_order_he_is_the_other() {
        Utterance he = TurnReader.standard().read("He parries quarte.");
        assertTrue(he.actions().stream().allMatch(Action.Aside.class::isInstance));
        assertEquals(List.of("aside"), leader("He parries quarte.", "Parry quarte."));
    }

    /** A drill of two counts in which the leader's turns are told to the follower. */
    @Test
    void where_all_of_a_side_is_told_to_the_other_your_partner_is_the_one_whose_turn_it_is() {
        assertEquals(
                List.of("lunge chest", "recover"),
                leaders("Your partner lunges to the chest.", "Your partner recovers."));
        assertEquals(List.of("aside", "recover"), leaders("Your partner lunges to the chest.", "Recover."));
    }

    private static List<String> leaders(String first, String second) {
        return leaders(List.of(first, second), "You stay in your guard.");
    }

    private static List<String> leaders(List<String> turns, String follower) {
        List<Map<Side, Utterance>> steps = turns.stream()
                .map(words -> Map.of(
                        Side.LEADER, TurnReader.standard().read(words).by(Side.LEADER),
                        Side.FOLLOWER, TurnReader.standard().read(follower).by(Side.FOLLOWER)))
                .toList();
        Script script = ToldOfBoth.read(new Script(Utterance.NOTHING, Utterance.NOTHING, steps, Utterance.NOTHING));
        return Stream.of(0, 1)
                .flatMap(step -> script.turn(step, Side.LEADER).actions().stream())
                .map(ActionText::of)
                .toList();
    }

    @ParameterizedTest(name = "{0} / {1}")
    @CsvSource(delimiter = '|', textBlock = """
                    My partner feints to the chest.             | I parry quarte.             | strike attack chest feint
                    Your partner lunges to the chest.           | I parry quarte.             | lunge chest
                    She stays in the lunge.                     | I riposte to the chest.     | hold
                    The opponent lunges to the chest.           | The pupil parries quarte.   | lunge chest
                    Mein Partner fintiert zur Brust.            | Ich pariere Quart.          | strike attack chest feint
                    Er bleibt im Ausfall.                       | Jetzt ripostiere ich zur Brust. | hold
                    Meine Partnerin fällt aus.                  | Der Schüler pariert Quart.  | lunge
                    Mon partenaire feinte à la poitrine.        | Je pare quarte.             | strike attack chest feint
                    Il reste fendu.                             | J'attaque à la poitrine.    | hold
                    Mon adversaire se fend.                     | Moi, je pare quarte.        | lunge
                    Mon camarade se fend.                       | L'élève pare quarte.        | lunge
                    Mi compañera para en cuarta.                | Respondo al pecho.          | parry quarte
                    Ella se levanta del fondo.                  | Yo vuelvo a sexta.          | recover
                    El compañero se tira a fondo.               | El alumno para en cuarta.   | lunge
                    Il mio compagno va a fondo al petto.        | Paro di quarta.             | lunge chest
                    Lui para di quarta.                         | Io rispondo al petto.       | parry quarte
                    Il compagno va a fondo.                     | L'allievo para di quarta.   | lunge
                    """)
    void beside_a_turn_told_by_oneself_or_by_name_the_other_is_the_one_whose_turn_it_is(
            String partner, String own, String does) {
        assertEquals(List.of(does), leader(partner, own));
    }

    /** The rest of a side may be told as it likes: in orders, or by nouns. */
    @ParameterizedTest(name = "{0} / {2}")
    @CsvSource(delimiter = '|', textBlock = """
                    My partner lunges to the chest.      | I parry quarte.    | Recover.               | lunge chest | recover
                    Mein Partner geht in die Sixt.       | Ich pariere Quart. | Hält die Stellung.     | place sixte | hold
                    Mon partenaire se fend à la poitrine. | Je pare quarte.   | Retour en garde.       | lunge chest | guard
                    Mi compañera se tira a fondo al pecho. | Paro en cuarta.  | Vuelve a guardia.      | lunge chest | guard
                    Il mio compagno va a fondo al petto. | Paro di quarta.    | Torna in guardia.      | lunge chest | guard
                    """)
    void one_count_told_so_is_enough(String partner, String own, String order, String first, String second) {
        assertEquals(List.of(first, second), leaders(List.of(partner, order), own));
    }

    @Test
    void where_each_says_i_of_himself_my_partner_is_the_other() {
        assertEquals(
                List.of("lunge", "aside"),
                leaders(List.of("I lunge.", "My partner ripostes to the chest."), "I riposte to the chest."));
    }

    @Test
    void what_is_not_understood_of_the_partner_is_not_known() {
        assertEquals(List.of("unread"), leader("Il mio compagno sta in guardia e mi sorride.", "Distendo il braccio."));
    }

    /** Nothing tells whose lunge it is: the follower does not lunge, and an order may be given to either. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "Your partner lunges to the chest.",
                "Dein Partner fällt aus.",
                "Ton partenaire se fend à la poitrine.",
                "Tu compañera se tira a fondo al pecho.",
                "Il tuo compagno va a fondo al petto."
            })
    void where_it_cannot_be_told_the_count_is_not_judged(String words) {
        Subject subject = Judged.drill("""
                        steps:
                          - leader: %s
                            follower: Hold on guard.
                            distance: lunge
                            safety: Arrive softly and let the blade bend.
                          - leader: Hold on guard.
                            follower: Hold on guard.
                            distance: lunge
                        """.formatted(words)).subject();
        assertEquals(0, subject.coverage().gaps().get(0).step());
        assertEquals(
                words.substring(0, words.length() - 1),
                subject.coverage().gaps().get(0).words().get(0));
    }

    /** No word of it is strange: to have the school add them all would help nobody. */
    @Test
    void where_it_cannot_be_told_it_is_asked_whose_deed_it_is() {
        List<Finding> notes = Judged.drill("""
                        steps:
                          - leader: Your partner lunges to the chest.
                            follower: Hold on guard.
                        """).all().stream()
                .filter(finding -> finding.rule().equals("words-unread"))
                .toList();
        assertEquals(1, notes.size());
        assertTrue(notes.get(0).what().toString().contains("whose deed"), notes::toString);
        assertTrue(notes.get(0).wayOut().toString().contains("name the one who does it"), notes::toString);
    }

    @Test
    void your_partner_of_one_count_is_never_oneself() {
        assertEquals(List.of("aside"), leader("Your partner lunges.", "He parries quarte."));
    }
}
