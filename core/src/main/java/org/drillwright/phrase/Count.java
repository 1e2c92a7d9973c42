package org.drillwright.phrase;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.drillwright.model.Side;
import org.drillwright.notation.Action;

/**
 * A count as it was played.
 *
 * @param begin the state in which it begins
 * @param moves in the order in which they were played
 * @param end the state in which it ends
 * @param unmet for a side whose attacker was not met, why not, the leader's before the follower's
 */
public record Count(State begin, List<Played> moves, State end, Map<Side, Refusal> unmet) {

    public Count {
        moves = List.copyOf(moves);
        Map<Side, Refusal> inOrder = new EnumMap<>(Side.class);
        inOrder.putAll(unmet);
        unmet = Collections.unmodifiableMap(inOrder);
    }

    /** Two who step at once do so together: nobody sees the measure between their steps. */
    private static boolean isStep(Played played) {
        return played.move().action() instanceof Action.Step;
    }

    /** The measures that a cue of this count may name, in their order. */
    public List<Range> measures() {
        List<Range> measures = new ArrayList<>(List.of(begin.measure()));
        for (int at = 1; at < moves.size(); at++) {
            boolean together = isStep(moves.get(at)) && isStep(moves.get(at - 1));
            if (moves.get(at).move().by() != moves.get(at - 1).move().by() && !together) {
                measures.add(moves.get(at).before().measure());
            }
        }
        measures.add(end.measure());
        return measures;
    }
}
