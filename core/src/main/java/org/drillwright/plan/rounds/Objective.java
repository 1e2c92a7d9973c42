package org.drillwright.plan.rounds;

import java.util.List;
import java.util.Locale;
import org.drillwright.wording.Message;

/**
 * What is to be kept small, the most important first. Before all of them: pairs that are kept apart, and pairs of two who
 * are both new to the drill and on whom nobody has an eye, are never made; and each round has the fewest who are alone, then
 * the best kinds of groups ({@link Extras}).
 */
public enum Objective {
    /** Pairs whose hands aren't as the drill asks: it is for left against right. */
    ASKED(0),
    /** The same two once more today: 1 for the second meeting, 2 more for the third, and so on. */
    REPEATS(1),
    /** Turns with the instructor or an assistant, beyond those of whoever had fewest. */
    TURNS(2),
    /** Turns of joining a pair as its third. */
    THREES(3),
    /** Turns alone. */
    BLANKS(4),
    /** Turns with another who is new, somebody's eyes on both. */
    WATCHED(5),
    /** Training: the sum of the squares of differences in skill. */
    GAP(6),
    /** Training: the largest difference in skill. */
    WIDEST(7),
    /** The same two as in past classes; recent ones weigh more. */
    PAST(8),
    /** Learning: differences in level. */
    LEVEL(9),
    /** Left against right in a drill that doesn't ask for it. */
    HANDS(10);

    public static final int COUNT = values().length;

    /** Those that are shared out by turns. */
    static final List<Objective> TURNS_OF_A_KIND = List.of(TURNS, THREES, BLANKS, WATCHED);

    private final int rank;

    Objective(int rank) {
        this.rank = rank;
    }

    /** Where its cost stands in a row of costs, counted from 0. */
    public int rank() {
        return rank;
    }

    /** What it is called in a sentence. */
    public Message words() {
        return Message.of(Objective.class, "aim." + name().toLowerCase(Locale.ROOT));
    }
}
