package org.drillwright.phrase.told;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.drillwright.check.Judged;
import org.drillwright.model.Side;
import org.drillwright.notation.Action;
import org.drillwright.notation.Clause;
import org.drillwright.notation.Move;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Which words of a turn belong to one move. A move is written as its actions; of its stroke the role, the path and the aim
 * follow in brackets. Moves are parted by {@code /}.
 */
class TurnMovesTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Advance, extend to the high inside line and lunge. | advance strike lunge (extension direct high inside)",
                "Jump forward and thrust to the chest.              | jump_forward strike (attack direct chest)",
                "Cross step forward and thrust to the chest.        | cross_forward strike (attack direct chest)",
                "Stamp the foot and lunge.                          | appel lunge",
                "Bring the rear foot up and lunge.                  | gain lunge",
                "Retreat and thrust to the chest.                   | retreat / strike (attack direct chest)",
                "Advance.                                           | advance",
                "Lunge, then lunge.                                 | lunge / lunge"
            })
    void feet_that_go_forward_carry_the_stroke(String turn, String moves) {
        assertEquals(moves, moves(turn, false));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Extend, then thrust to the chest.                  | strike strike (attack direct chest)",
                "Extend to the chest, then thrust and lunge.        | strike strike lunge (attack direct chest)",
                "Extend, then disengage to the high inside line.    | strike (extension direct) / strike (attack disengage high inside)",
                "Extend to the chest, then disengage to the flank.  | strike (extension direct chest) / strike (attack disengage flank)",
                "Feint to the chest, then thrust to the flank.      | strike (feint attack unstated chest) / strike (attack direct flank)",
                "Feint to the chest and lunge to the flank.         | strike (feint attack unstated chest) / lunge",
                "Thrust to the chest, then thrust to the flank.     | strike (attack direct chest) / strike (attack direct flank)",
                "Deceive the parry and thrust to the chest.         | strike (attack deceive chest)",
                "Deceive the parry and feint to the chest.          | strike (attack deceive) / strike (feint attack unstated chest)",
                "Thrust to the chest and lunge to the high inside line. | strike lunge (attack direct high inside chest)"
            })
    void an_extension_and_the_touch_it_leads_to_are_one_stroke(String turn, String moves) {
        assertEquals(moves, moves(turn, false));
    }

    @Test
    void opposition_and_the_edge_stay_with_the_stroke_wherever_they_are_said() {
        assertEquals(
                "strike strike (attack direct opposition chest)",
                moves("Extend with opposition, then thrust to the chest.", false));
        assertEquals("strike strike (attack direct edge chest)", moves("Extend, then cut to the chest.", false));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Hold the lunge and take the touch.                 | receive",
                "Hold the lunge.                                    | hold",
                "Hold the lunge and parry quarte.                   | parry in the lunge",
                "Parry quarte.                                      | parry",
                "Wait on guard in quarte, then take the touch.      | wait / receive",
                "Breathe, then extend to the chest and lunge.       | strike lunge (extension direct chest)",
                "Nod.                                               | aside"
            })
    void what_touches_nothing_of_the_phrase_parts_nothing(String turn, String moves) {
        assertEquals(moves, moves(turn, false));
    }

    @Test
    void a_bind_with_an_aim_carries_the_point_there() {
        assertEquals(
                "bind / strike (attack unstated opposition low outside)",
                moves("Bind to the low outside line.", false));
        assertEquals(
                "bind / strike (attack direct low outside)", moves("Bind to the low outside line and thrust.", false));
        assertEquals("bind", moves("Bind the blade.", false));
    }

    @Test
    void a_thrust_on_the_lunge_is_made_with_a_lunge_by_who_stands_and_from_the_lunge_by_who_is_down() {
        String turn = "Thrust to the chest on the lunge.";
        assertEquals("strike lunge (attack direct chest)", moves(turn, false));
        assertEquals("strike (attack direct chest)", moves(turn, true));
    }

    private static String moves(String turn, boolean lunged) {
        List<Clause> clauses = Judged.drill("steps:\n  - leader: " + turn + "\n    follower: Hold.\n")
                .subject()
                .script()
                .turn(0, Side.LEADER)
                .clauses();
        return TurnMoves.of(Side.LEADER, clauses, lunged).stream()
                .map(TurnMovesTest::shown)
                .collect(Collectors.joining(" / "));
    }

    private static String shown(Move move) {
        String actions = move.parts().stream().map(part -> word(part.action())).collect(Collectors.joining(" "));
        boolean strokes = move.parts().stream().anyMatch(part -> part.action() instanceof Action.Strike);
        return strokes ? actions + " (" + stroke(move.strike().orElseThrow()) + ")" : actions;
    }

    private static String word(Action action) {
        if (action instanceof Action.Step step) {
            return step.foot().name().toLowerCase(Locale.ROOT);
        }
        if (action instanceof Action.Answer answer) {
            return answer.reply().name().toLowerCase(Locale.ROOT);
        }
        if (action instanceof Action.OnBlade onBlade) {
            return onBlade.contact().name().toLowerCase(Locale.ROOT);
        }
        if (action instanceof Action.Parry parry) {
            return parry.inTheLunge() ? "parry in the lunge" : "parry";
        }
        return action.getClass().getSimpleName().toLowerCase(Locale.ROOT);
    }

    private static String stroke(Action.Strike strike) {
        List<String> parts = new ArrayList<>();
        if (strike.feint()) {
            parts.add("feint");
        }
        parts.add(strike.role().name().toLowerCase(Locale.ROOT));
        parts.add(strike.path().name().toLowerCase(Locale.ROOT));
        if (strike.opposition()) {
            parts.add("opposition");
        }
        if (strike.cut()) {
            parts.add("edge");
        }
        if (strike.aim().isStated()) {
            parts.add(strike.aim().toString());
        }
        return String.join(" ", parts);
    }
}
