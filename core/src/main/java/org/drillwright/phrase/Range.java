package org.drillwright.phrase;

import org.drillwright.notation.Measure;

/**
 * The measure as far as it is known: the foot actions that it takes to touch, 0 being an extension, below 0 close.
 *
 * @param least the least it can be
 * @param most the most it can be
 */
public record Range(int least, int most) {

    private static final int FAR = 1000;

    public static final Range UNKNOWN = new Range(-FAR, FAR);

    /** What a measure in words stands for; close and out have no end. */
    public static Range of(Measure measure) {
        return switch (measure) {
            case CLOSE -> new Range(-FAR, measure.steps());
            case OUT -> new Range(measure.steps(), FAR);
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

    /** The measure in a word, such as {@code lunge distance}. */
    public String words() {
        if (!isKnown()) {
            return "an unknown distance";
        }
        if (isExact()) {
            return named(Measure.of(least));
        }
        if (least >= Measure.OUT.steps()) {
            return "out of distance";
        }
        if (far(least)) {
            return named(Measure.of(most)) + (most < 0 ? "" : " or nearer");
        }
        return named(Measure.of(least)) + " or further away";
    }

    private static String named(Measure measure) {
        return measure == Measure.OUT ? "out of distance" : measure.word() + " distance";
    }

    @Override
    public String toString() {
        return !isKnown() ? "?" : isExact() ? Integer.toString(least) : least + (most >= FAR ? "+" : ".." + most);
    }
}
