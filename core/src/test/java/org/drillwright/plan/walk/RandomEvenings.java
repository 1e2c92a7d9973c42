package org.drillwright.plan.walk;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Random;
import org.drillwright.plan.rounds.Problem;

/** Small evenings by chance. */
final class RandomEvenings {

    private RandomEvenings() {}

    /** Each drill has as many rounds as a line may be long, so that all meet across; nobody joins a pair as its third. */
    static Problem of(Random random, int students, int drills) {
        int helpers = random.nextInt(3);
        List<BitSet> novices = new ArrayList<>();
        for (int drill = 0; drill < drills; drill++) {
            BitSet fresh = new BitSet();
            int count = random.nextInt(students);
            for (int at = 0; at < count; at++) {
                fresh.set(random.nextInt(students));
            }
            for (int round = 0; round < students; round++) {
                novices.add(fresh);
            }
        }
        Problem problem = new Problem(students, helpers, novices);
        for (int pair = random.nextInt(4); pair > 0 && students + helpers > 1; pair--) {
            int one = random.nextInt(students);
            int other = random.nextInt(students + helpers);
            if (one != other) {
                problem.apart(one, other);
            }
        }
        return problem;
    }
}
