package org.drillwright.plan.rounds;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.drillwright.plan.match.Edge;
import org.drillwright.plan.match.RegularFactor;

/**
 * How many rounds to hope for in which nobody meets twice: the most for which each student can have so many different
 * partners, those who are kept apart counted out. A helper may be met again. No more rounds are without a repeat; where few
 * may meet, fewer may be, as partners need not fall into rounds (Petersen's graph has three for each, and no two rounds), and
 * to decide that is hard (Holyer 1981).
 */
public final class LongestRun {

    /** Vertices of the graph that is looked at; beyond it the number hoped for is taken. */
    private static final int LARGEST = 6_000;

    private final Problem problem;
    private final Extras extras;

    private LongestRun(Problem problem) {
        this.problem = problem;
        this.extras = Extras.ofAll(problem).get(0);
    }

    /**
     * Looks by halving.
     *
     * @param problem of one round
     * @param hoped as many as there are if nobody is kept apart, 1 or more
     */
    public static int of(Problem problem, int hoped) {
        LongestRun run = new LongestRun(problem);
        if (problem.students() < 2 || !run.isOfPairs() || run.allows(hoped)) {
            return hoped;
        }
        int low = 1;
        int high = hoped - 1;
        while (low < high) {
            int middle = (low + high + 1) >>> 1;
            if (run.allows(middle)) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return low;
    }

    private boolean isOfPairs() {
        return extras.blanks() == 0 && extras.threes() == 0;
    }

    private boolean allows(int rounds) {
        int students = problem.students();
        List<Edge> edges = new ArrayList<>();
        for (int one = 0; one < students; one++) {
            for (int other = one + 1; other < students; other++) {
                if (problem.permits(0, one, other)) {
                    edges.add(new Edge(one, other, 0));
                }
            }
            for (int turn = 0; turn < rounds && mayBeHelped(one); turn++) {
                edges.add(new Edge(one, students, 0));
            }
        }
        int[] degrees = new int[students + (extras.helpers() > 0 ? 1 : 0)];
        Arrays.fill(degrees, rounds);
        if (extras.helpers() > 0) {
            degrees[students] = extras.helpers() * rounds;
        }
        boolean large = students * rounds + 2 * edges.size() > LARGEST;
        return large || RegularFactor.lightest(degrees, edges).isPresent();
    }

    private boolean mayBeHelped(int student) {
        for (int helper = problem.students(); extras.helpers() > 0 && helper < problem.blank(); helper++) {
            if (problem.permits(0, student, helper)) {
                return true;
            }
        }
        return false;
    }
}
