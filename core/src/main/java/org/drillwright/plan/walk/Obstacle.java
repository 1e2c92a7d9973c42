package org.drillwright.plan.walk;

import java.util.List;

/**
 * Why no forming serves a drill.
 *
 * @param from the first of its rounds, counted from 0
 * @param to the round after its last
 * @param why what stands in the way
 * @param together students who have to stand in one line: the most; none if it isn't for that
 * @param helpers how many who help could stand in a line
 */
public record Obstacle(int from, int to, Why why, List<Integer> together, int helpers) {

    /** What stands in the way. */
    public enum Why {
        /** So many are new that some of them have to work together. */
        TOO_MANY_NEW,
        /** So many have to stand in one line that the others can't fill the second. */
        ONE_LINE,
        /** However those who have to stand in one line are dealt, the lines are of different length. */
        UNEVEN,
        /** Somebody who would rest may join no pair. */
        REST
    }

    public Obstacle {
        together = List.copyOf(together);
    }
}
