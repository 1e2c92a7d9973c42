package org.drillwright.plan.pair;

import java.util.Optional;
import org.drillwright.plan.rounds.CostVector;
import org.drillwright.plan.rounds.Objective;
import org.drillwright.wording.Message;

/**
 * How good a plan is known to be.
 *
 * @param cost what its pairs cost
 * @param bound below which no plan is in which as many work with a helper; where the two are equal, the plan is proved best
 * @param takesMore whether more work with a helper than need be, so that a class can walk; then nothing is proved
 * @param bestLines whether it walks in two lines, and no others in which everybody may meet everybody opposite have fewer
 *     past meetings
 */
public record Verdict(CostVector cost, CostVector bound, boolean takesMore, boolean bestLines) {

    public boolean isProvedBest() {
        return !takesMore && cost.compareTo(bound) == 0;
    }

    /** The most important aim that isn't proved, if any. */
    public Optional<Objective> open() {
        return cost.firstDifference(bound);
    }

    /** How far above the bound the plan is in that aim; 0 if it is proved best. */
    public long above() {
        return open().map(aim -> cost.of(aim) - bound.of(aim)).orElse(0L);
    }

    /** 'proved best', or by how much it may miss. */
    public Message sentence() {
        if (takesMore) {
            return Message.of(Verdict.class, "verdict.lines");
        }
        return open().map(this::missed).orElseGet(() -> Message.of(Verdict.class, "verdict.best"));
    }

    private Message missed(Objective aim) {
        String known = aim == Objective.REPEATS ? "repeats" : bestLines ? "above.lines" : "above";
        return Message.of(Verdict.class, "verdict." + known, aim.words(), above());
    }
}
