package org.drillwright.plan.rounds;

import java.util.Arrays;

/**
 * Rounds of partners: for each round and student the partner's number, a helper's, or {@link Problem#blank()}.
 */
public final class PartnerTable {

    private final int[][] mates;

    PartnerTable(int[][] mates) {
        this.mates = mates;
    }

    static PartnerTable empty(Problem problem) {
        int[][] mates = new int[problem.rounds()][problem.students()];
        for (int[] round : mates) {
            Arrays.fill(round, problem.blank());
        }
        return new PartnerTable(mates);
    }

    public int mate(int round, int student) {
        return mates[round][student];
    }

    int[] row(int round) {
        return mates[round].clone();
    }

    /** This table with one round replaced. */
    PartnerTable with(int round, int[] replacement) {
        int[][] changed = mates.clone();
        changed[round] = replacement.clone();
        return new PartnerTable(changed);
    }
}
