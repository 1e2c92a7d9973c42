package org.drillwright.plan.rounds;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.plan.match.Edge;
import org.drillwright.plan.match.Matching;

/**
 * Who must help in a round, and for how many no partner is left.
 *
 * @param pairs the most pairs of students that can be made
 * @param helpers how many helpers, the instructor first, take a student: the fewest that leave fewest alone
 * @param blanks students left without a partner even so
 */
public record Extras(int pairs, int helpers, int blanks) {

    /** Counts them for one round; a helper more is used only if it leaves one fewer alone. */
    public static Extras of(Problem problem, int round) {
        int alone = alone(problem, round, 0);
        int pairs = (problem.students() - alone) / 2;
        int helpers = 0;
        while (helpers < problem.helpers() && alone(problem, round, helpers + 1) < alone) {
            helpers++;
            alone--;
        }
        return new Extras(pairs, helpers, alone);
    }

    private static int alone(Problem problem, int round, int helpers) {
        int vertices = problem.students() + helpers;
        List<Edge> edges = new ArrayList<>();
        for (int one = 0; one < vertices; one++) {
            for (int other = one + 1; other < vertices; other++) {
                if (problem.permits(round, one, other)) {
                    edges.add(new Edge(one, other, 0));
                }
            }
        }
        int alone = 0;
        for (int mate : Matching.largest(vertices, edges)) {
            alone += mate == Matching.NOBODY ? 1 : 0;
        }
        return alone;
    }

    /** The extras of each round; rounds with the same novices are counted once. */
    static List<Extras> ofAll(Problem problem) {
        List<Extras> all = new ArrayList<>();
        for (int round = 0; round < problem.rounds(); round++) {
            int same = round - 1;
            while (same >= 0 && !problem.novices(same).equals(problem.novices(round))) {
                same--;
            }
            all.add(same >= 0 ? all.get(same) : of(problem, round));
        }
        return all;
    }
}
