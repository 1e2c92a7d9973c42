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
import org.junit.jupiter.api.Test;

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
        List<Map<Side, Utterance>> steps = Stream.of(first, second)
                .map(words -> Map.of(
                        Side.LEADER, TurnReader.standard().read(words).by(Side.LEADER),
                        Side.FOLLOWER,
                                TurnReader.standard()
                                        .read("You stay in your guard.")
                                        .by(Side.FOLLOWER)))
                .toList();
        Script script = ToldOfBoth.read(new Script(Utterance.NOTHING, Utterance.NOTHING, steps, Utterance.NOTHING));
        return Stream.of(0, 1)
                .flatMap(step -> script.turn(step, Side.LEADER).actions().stream())
                .map(ActionText::of)
                .toList();
    }

    @Test
    void your_partner_of_one_count_is_never_oneself() {
        assertEquals(List.of("aside"), leader("Your partner lunges.", "He parries quarte."));
    }
}
