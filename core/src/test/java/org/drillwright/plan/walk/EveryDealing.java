package org.drillwright.plan.walk;

import java.util.List;
import org.drillwright.plan.rounds.Extras;
import org.drillwright.plan.rounds.Problem;

/** Looks at all ways to deal people to two lines, one by one. */
final class EveryDealing {

    private EveryDealing() {}

    /** Whether one of the ways serves: students in line A, in line B, helpers in B or nowhere, and no more gaps than there must be. */
    static boolean serves(Problem problem, List<Extras> least, int from, int to) {
        int gaps = Integer.MAX_VALUE;
        for (int round = from; round < to; round++) {
            gaps = Math.min(gaps, least.get(round).blanks() + least.get(round).threes());
        }
        for (int moving = 0; moving < 1 << problem.students(); moving++) {
            for (int helping = 0; helping < 1 << problem.helpers(); helping++) {
                int length = problem.students() - Integer.bitCount(moving);
                int walkers = Integer.bitCount(moving) + Integer.bitCount(helping);
                boolean fewest = walkers == length || Integer.bitCount(helping) == problem.helpers();
                if (walkers > 0
                        && walkers <= length
                        && length - walkers <= gaps
                        && fewest
                        && allMayMeet(problem, moving, helping, from, to)) {
                    return true;
                }
            }
        }
        return false;
    }

    private static boolean allMayMeet(Problem problem, int moving, int helping, int from, int to) {
        for (int stays = 0; stays < problem.students(); stays++) {
            for (int other = 0; other < problem.blank(); other++) {
                boolean moves = problem.isStudent(other)
                        ? (moving >> other & 1) == 1
                        : (helping >> (other - problem.students()) & 1) == 1;
                if ((moving >> stays & 1) == 0 && moves && !mayMeet(problem, stays, other, from, to)) {
                    return false;
                }
            }
        }
        return true;
    }

    private static boolean mayMeet(Problem problem, int one, int other, int from, int to) {
        for (int round = from; round < to; round++) {
            boolean bothNew = problem.isStudent(other)
                    && problem.novices(round).get(one)
                    && problem.novices(round).get(other);
            if (bothNew || problem.areApart(one, other)) {
                return false;
            }
        }
        return true;
    }

    /** Whether everybody stands in one line once, the lines are of one length, and all may meet across. */
    static boolean isSound(Problem problem, LinePosts lines) {
        int moving = 0;
        int helping = 0;
        for (int vertex : lines.moves()) {
            moving |= problem.isStudent(vertex) ? 1 << vertex : 0;
            helping |= !problem.isStudent(vertex) && vertex < problem.blank() ? 1 << (vertex - problem.students()) : 0;
        }
        int all = moving;
        for (int vertex : lines.stays()) {
            if (!problem.isStudent(vertex) || (all >> vertex & 1) == 1) {
                return false;
            }
            all |= 1 << vertex;
        }
        return all == (1 << problem.students()) - 1
                && lines.stays().size() == lines.moves().size()
                && allMayMeet(problem, moving, helping, 0, problem.rounds());
    }
}
