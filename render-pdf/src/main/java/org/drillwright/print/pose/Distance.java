package org.drillwright.print.pose;

import org.drillwright.phrase.Range;

/** How far the front toes of the two are from each other, in metres. Judged by eye on drawn bodies, no source. */
final class Distance {

    /** Where the point of a straight arm just bends the blade. */
    static final double EXTENSION = 0.87;

    /** What a lunge gains. */
    static final double LUNGE = 0.62;

    /** What a step gains. */
    static final double STEP = 0.42;

    /** What the rear foot gains that passes in a flèche. */
    static final double FLECHE = 0.90;

    private static final double CLOSE = 0.49;

    /** Not to scale, or it would not go on a card. */
    private static final double OUT = 2.03;

    private Distance() {}

    /** As two stand who do no stroke. Blades that touch are near enough for that, whatever is known. */
    static double of(Range measure, boolean touching) {
        if (!measure.isKnown() || measure.isOut()) {
            return touching ? reach(1) : OUT;
        }
        if (measure.most() < 0) {
            return CLOSE;
        }
        return reach(Math.max(0, measure.least()));
    }

    /**
     * As two stand where a stroke meets its target or a parry.
     *
     * @param within the foot actions within which it arrives
     */
    static double ofMeeting(Range measure, int within) {
        return measure.most() < 0 ? CLOSE : reach(Math.min(within, Math.max(0, measure.least())));
    }

    /** So many foot actions from touching, 0 to 2. */
    static double reach(int actions) {
        return EXTENSION
                + switch (actions) {
                    case 0 -> 0;
                    case 1 -> LUNGE;
                    default -> LUNGE + STEP;
                };
    }
}
