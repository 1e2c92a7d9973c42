package org.drillwright.print.layout.fit;

import java.util.List;
import org.drillwright.print.layout.words.CardText;

/** How the two sides share a width: so that the counts take fewest lines, and of such ways the most equal. */
final class Shares {

    private static final double STEP = 0.025;
    private static final int STEPS = 8;

    /** A broken word is worse than any number of lines. */
    private static final double BROKEN = 1e6;

    private Shares() {}

    /** The leader's share of a width that is given as a multiple of the type size. */
    static double leader(List<CardText.Count> counts, double width) {
        double best = 0.5;
        double least = cost(counts, best * width, width - best * width);
        for (int step = 1; step <= STEPS; step++) {
            for (double share : new double[] {0.5 - step * STEP, 0.5 + step * STEP}) {
                double cost = cost(counts, share * width, width - share * width);
                if (cost < least) {
                    least = cost;
                    best = share;
                }
            }
        }
        return best;
    }

    private static double cost(List<CardText.Count> counts, double leader, double follower) {
        double cost = 0;
        for (CardText.Count count : counts) {
            cost += Math.max(count.leader().lineCount(leader), count.follower().lineCount(follower));
            boolean broken =
                    count.leader().widest() > leader || count.follower().widest() > follower;
            cost += broken ? BROKEN : 0;
        }
        return cost;
    }
}
