package org.drillwright.plan.walk;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.plan.rounds.Objective;
import org.drillwright.plan.rounds.Problem;

/** What it costs that two face each other in a round, looked up once for all; rounds that are alike share it. */
final class Meetings {

    /** Past meetings, levels and hands stand in one number, each with more room (in bits) than an evening fills. */
    static final int ROOM = 20;

    private final List<Kind> rounds = new ArrayList<>();

    /** Rounds of one kind, by the two numbers; only students have costs. */
    private static final class Kind {

        private final boolean[][] forbidden;
        private final boolean[][] watched;
        private final long[][] asked;
        private final long[][] lasting;

        Kind(Problem problem, int round) {
            int students = problem.students();
            this.forbidden = new boolean[students][problem.blank()];
            this.watched = new boolean[students][students];
            this.asked = new long[students][students];
            this.lasting = new long[students][students];
            for (int one = 0; one < students; one++) {
                for (int other = 0; other < problem.blank(); other++) {
                    forbidden[one][other] = !problem.permits(round, one, other);
                    if (problem.isStudent(other)) {
                        fill(problem, round, one, other);
                    }
                }
            }
        }

        private void fill(Problem problem, int round, int one, int other) {
            boolean asking = problem.isAsking(round);
            watched[one][other] = problem.areBothNew(round, one, other);
            asked[one][other] = asking ? problem.cost(Objective.ASKED, one, other) : 0;
            long hands = asking ? 0 : problem.cost(Objective.HANDS, one, other);
            lasting[one][other] = (problem.cost(Objective.PAST, one, other) << (2 * ROOM))
                    + (problem.cost(Objective.LEVEL, one, other) << ROOM)
                    + hands;
        }
    }

    Meetings(Problem problem) {
        for (int round = 0; round < problem.rounds(); round++) {
            int like = 0;
            while (like < round && !areAlike(problem, like, round)) {
                like++;
            }
            rounds.add(like < round ? rounds.get(like) : new Kind(problem, round));
        }
    }

    private static boolean areAlike(Problem problem, int one, int other) {
        return problem.isAsking(one) == problem.isAsking(other)
                && problem.novices(one).equals(problem.novices(other))
                && problem.strangers(one).equals(problem.strangers(other));
    }

    /** Whether a student may not face another, or a helper. */
    boolean isForbidden(int round, int student, int mate) {
        return rounds.get(round).forbidden[student][mate];
    }

    /** Whether both students are new. */
    boolean isWatched(int round, int student, int mate) {
        return rounds.get(round).watched[student][mate];
    }

    /** What two students cost of hands that are asked for. */
    long asked(int round, int student, int mate) {
        return rounds.get(round).asked[student][mate];
    }

    /** What two students cost of past meetings, levels and hands; sums stand in the order of these. */
    long lasting(int round, int student, int mate) {
        return rounds.get(round).lasting[student][mate];
    }
}
