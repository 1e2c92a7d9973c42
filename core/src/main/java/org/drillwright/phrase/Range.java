package org.drillwright.phrase;

import org.drillwright.notation.Measure;
import org.drillwright.terms.Terms;
import org.drillwright.wording.Message;

/**
 * The measure as far as it is known: the foot actions that it takes to touch, 0 being an extension, below 0 close.
 *
 * @param least the least it can be
 * @param most the most it can be
 */
public record Range(int least, int most) {

    private static final int FAR = 1000;

    /**
     * The least that 'out of distance' can mean. Some mean out of any attack by it (Glasser 1994: beyond the advance and
     * lunge), some out of a lunge's reach, as a fencer one step back is (Waite 1880, p. 86).
     */
    private static final int BEYOND_A_LUNGE = Measure.ADVANCE_LUNGE.steps();

    public static final Range UNKNOWN = new Range(-FAR, FAR);

    /** What a measure in words stands for; close and out have no end, and out begins where a lunge no longer reaches. */
    public static Range of(Measure measure) {
        return switch (measure) {
            case CLOSE -> new Range(-FAR, measure.steps());
            case OUT -> new Range(BEYOND_A_LUNGE, FAR);
            default -> exactly(measure.steps());
        };
    }

    public static Range exactly(int steps) {
        return new Range(steps, steps);
    }

    /** The measure after so many foot actions apart (above 0) or together (below 0). */
    public Range shift(int steps) {
        return new Range(far(least) ? least : least + steps, far(most) ? most : most + steps);
    }

    private static boolean far(int steps) {
        return steps <= -FAR || steps >= FAR;
    }

    public boolean isKnown() {
        return !equals(UNKNOWN);
    }

    public boolean isExact() {
        return least == most;
    }

    /** Whether the two can be the same measure. */
    public boolean meets(Range other) {
        return least <= other.most && other.least <= most;
    }

    /** Whether it is out of distance, however far. */
    public boolean isOut() {
        return least >= Measure.OUT.steps() || (least >= BEYOND_A_LUNGE && far(most));
    }

    /**
     * The measure if a touch arrives from it: where no end is set to it, it is as near as that takes. What is near enough
     * anyhow, too far, or unknown stays as it is.
     *
     * @param reach the greatest measure from which the touch arrives
     */
    Range within(int reach) {
        return isKnown() && least <= reach && most >= FAR ? new Range(least, reach) : this;
    }

    /** The measure in words, such as {@code lunge distance}; with the form {@code at}, where that is. */
    public Message words() {
        if (!isKnown()) {
            return Message.of(Range.class, "range.unknown");
        }
        if (isExact()) {
            return Terms.of(Measure.of(least));
        }
        if (isOut()) {
            return Terms.of(Measure.OUT);
        }
        if (far(least)) {
            Message nearest = Terms.of(Measure.of(most));
            return most < 0 ? nearest : Message.of(Range.class, "range.nearer", nearest);
        }
        return far(most)
                ? Message.of(Range.class, "range.further", Terms.of(Measure.of(least)))
                : Message.of(Range.class, "range.between", Terms.of(Measure.of(least)), Terms.of(Measure.of(most)));
    }

    @Override
    public String toString() {
        return !isKnown() ? "?" : isExact() ? Integer.toString(least) : least + (most >= FAR ? "+" : ".." + most);
    }
}
