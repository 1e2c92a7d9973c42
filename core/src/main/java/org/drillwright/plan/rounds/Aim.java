package org.drillwright.plan.rounds;

/**
 * What is to be kept small, the most important first. Before all of them: pairs that are kept apart, and pairs of two who
 * are both new to the drill, are never made.
 */
public enum Aim {
    /** The same two once more today: 1 for the second meeting, 2 more for the third, and so on. */
    REPEATS("repeats today"),
    /** Turns with the instructor or an assistant, beyond those of whoever had fewest. */
    TURNS("the instructor's turns"),
    /** Turns without a partner, beyond those of whoever had fewest. */
    BLANKS("turns without a partner"),
    /** Training: the sum of the differences in skill. */
    GAP("the sum of gaps in skill"),
    /** Training: the largest difference in skill. */
    WIDEST("the largest gap in skill"),
    /** The same two as in past classes; recent ones weigh more. */
    PAST("repeats of past classes"),
    /** Learning: differences in level. */
    LEVEL("differences in level"),
    /** Hands that aren't those of the drill. */
    HANDS("hands");

    static final int COUNT = values().length;

    private final String words;

    Aim(String words) {
        this.words = words;
    }

    /** What it is called in a sentence. */
    public String words() {
        return words;
    }
}
