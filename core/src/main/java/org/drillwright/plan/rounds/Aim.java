package org.drillwright.plan.rounds;

import java.util.List;

/**
 * What is to be kept small, the most important first. Before all of them: pairs that are kept apart, and pairs of two who
 * are both new to the drill and on whom nobody has an eye, are never made; and each round has the fewest who are alone, then
 * the best kinds of groups ({@link Extras}).
 */
public enum Aim {
    /** Pairs whose hands aren't as the drill asks: it is for left against right. */
    ASKED(0, "hands the drill asks for"),
    /** The same two once more today: 1 for the second meeting, 2 more for the third, and so on. */
    REPEATS(1, "repeats today"),
    /** Turns with the instructor or an assistant, beyond those of whoever had fewest. */
    TURNS(2, "the instructor's turns"),
    /** Turns of joining a pair as its third. */
    THREES(3, "turns as a third"),
    /** Turns alone. */
    BLANKS(4, "turns without a partner"),
    /** Turns with another who is new, somebody's eyes on both. */
    WATCHED(5, "turns with somebody else who is new"),
    /** Training: the sum of the squares of differences in skill. */
    GAP(6, "the sum of squared gaps in skill"),
    /** Training: the largest difference in skill. */
    WIDEST(7, "the largest gap in skill"),
    /** The same two as in past classes; recent ones weigh more. */
    PAST(8, "repeats of past classes"),
    /** Learning: differences in level. */
    LEVEL(9, "differences in level"),
    /** Left against right in a drill that doesn't ask for it. */
    HANDS(10, "pairs of a right and a left hand");

    public static final int COUNT = values().length;

    /** Those that are shared out by turns. */
    static final List<Aim> TURNS_OF_A_KIND = List.of(TURNS, THREES, BLANKS, WATCHED);

    private final int rank;
    private final String words;

    Aim(int rank, String words) {
        this.rank = rank;
        this.words = words;
    }

    /** Where its cost stands in a row of costs, counted from 0. */
    public int rank() {
        return rank;
    }

    /** What it is called in a sentence. */
    public String words() {
        return words;
    }
}
