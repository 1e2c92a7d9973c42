package org.drillwright.plan.pair;

import java.util.Optional;
import org.drillwright.plan.rounds.Aim;
import org.drillwright.plan.rounds.Tally;

/**
 * How good a plan is known to be.
 *
 * @param cost what its pairs cost
 * @param bound below which no plan is in which as many work with a helper; where the two are equal, the plan is proved best
 * @param takesMore whether more work with a helper than need be, so that a class can walk; then nothing is proved
 * @param bestLines whether it walks in two lines, and no others in which everybody may meet everybody opposite have fewer
 *     past meetings
 */
public record Verdict(Tally cost, Tally bound, boolean takesMore, boolean bestLines) {

    public boolean isProvedBest() {
        return !takesMore && cost.compareTo(bound) == 0;
    }

    /** The most important aim that isn't proved, if any. */
    public Optional<Aim> open() {
        return cost.firstDifference(bound);
    }

    /** How far above the bound the plan is in that aim; 0 if it is proved best. */
    public long above() {
        return open().map(aim -> cost.of(aim) - bound.of(aim)).orElse(0L);
    }

    /** 'proved best', or by how much it may miss. */
    public String sentence() {
        if (takesMore) {
            return "Helpers join the lines so that everyone can walk; the places are the best that were found.";
        }
        return open().map(this::missed).orElse("Proved best.");
    }

    private String missed(Aim aim) {
        String better = "another plan could be better by " + above() + " at most";
        return aim == Aim.REPEATS
                ? "In " + aim.words() + " " + better + "."
                : "Proved best in everything more important than " + aim.words() + "; in that, " + better
                        + (bestLines
                                ? "; of two lines in which everybody may work with everybody opposite, none are better."
                                : ".");
    }
}
