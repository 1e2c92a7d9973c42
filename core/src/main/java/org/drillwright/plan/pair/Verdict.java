package org.drillwright.plan.pair;

import java.util.Optional;
import org.drillwright.plan.rounds.Aim;
import org.drillwright.plan.rounds.Tally;

/**
 * How good a plan is known to be.
 *
 * @param cost what its pairs cost
 * @param bound below which no plan is; where the two are equal, the plan is proved best
 */
public record Verdict(Tally cost, Tally bound) {

    public boolean isProvedBest() {
        return cost.compareTo(bound) == 0;
    }

    /** The most important aim that isn't proved, if any. */
    public Optional<Aim> open() {
        return isProvedBest() ? Optional.empty() : cost.firstDifference(bound);
    }

    /** How far above the bound the plan is in that aim; 0 if it is proved best. */
    public long above() {
        return open().map(aim -> cost.of(aim) - bound.of(aim)).orElse(0L);
    }

    /** 'proved best', or by how much it may miss. */
    public String sentence() {
        return open().map(aim -> "At most " + above() + " above the bound in " + aim.words()
                        + (aim == Aim.REPEATS ? "." : "; proved best in all that is more important."))
                .orElse("Proved best.");
    }
}
