package org.drillwright.plan.rounds;

/**
 * What is to be kept small, the most important first. Before all of them: pairs that are kept apart, and pairs of two who
 * are both new to the drill, are never made.
 */
public enum Aim {
    /** The same two once more today: 1 for the second meeting, 2 more for the third, and so on. */
    REPEATS(0, "repeats today"),
    /** Turns with the instructor or an assistant, beyond those of whoever had fewest. */
    TURNS(1, "the instructor's turns"),
    /** Turns without a partner, beyond those of whoever had fewest. */
    BLANKS(2, "turns without a partner"),
    /** Training: the sum of the differences in skill. */
    GAP(3, "the sum of gaps in skill"),
    /** Training: the largest difference in skill. */
    WIDEST(4, "the largest gap in skill"),
    /** The same two as in past classes; recent ones weigh more. */
    PAST(5, "repeats of past classes"),
    /** Learning: differences in level. */
    LEVEL(6, "differences in level"),
    /** Hands that aren't those of the drill. */
    HANDS(7, "hands");

    static final int COUNT = values().length;

    private final int rank;
    private final String words;

    Aim(int rank, String words) {
        this.rank = rank;
        this.words = words;
    }

    /** Where its cost stands in a row of costs, counted from 0. */
    int rank() {
        return rank;
    }

    /** What it is called in a sentence. */
    public String words() {
        return words;
    }
}
