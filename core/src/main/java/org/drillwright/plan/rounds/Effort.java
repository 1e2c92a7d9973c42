package org.drillwright.plan.rounds;

/**
 * How long a search by steps goes on: the larger the class, the shorter.
 *
 * @param beginnings tables begun anew
 * @param passes through all rounds of one table
 * @param stalls passes in a row that help nothing
 */
record Effort(int beginnings, int passes, int stalls) {

    /** Pairs looked at in all beginnings, and in all passes, of one search. */
    private static final int WORK = 60_000;

    static Effort of(Problem problem) {
        int pass = problem.rounds() * problem.students() * problem.students();
        int affordable = WORK / Math.max(1, pass);
        int passes = Math.max(2, Math.min(12, affordable));
        return new Effort(Math.max(1, Math.min(10, affordable)), passes, Math.min(3, passes - 1));
    }

    /** Whether to begin once more after so many beginnings. */
    boolean allowsBeginningAfter(int begun) {
        return begun < beginnings;
    }

    /** Whether to pass through all rounds once more after so many passes, the last of which helped nothing. */
    boolean allowsPassAfter(int passed, int stalled) {
        return passed < passes && stalled < stalls;
    }
}
