package org.drillwright.print.pose.body;

/**
 * A blade as a cubic curve from the bell to its end.
 *
 * @param bell the middle of the front of the bell
 * @param handle the first control point
 * @param otherHandle the second one
 * @param tip the end
 */
public record Blade(Point bell, Point handle, Point otherHandle, Point tip) {

    public static Blade straight(Point bell, Point tip) {
        return new Blade(bell, bell.towards(tip, 1.0 / 3), bell.towards(tip, 2.0 / 3), tip);
    }

    /** On the curve, 0 being the bell and 1 the end. */
    public Point at(double share) {
        double rest = 1 - share;
        return bell.times(rest * rest * rest)
                .plus(handle.times(3 * rest * rest * share))
                .plus(otherHandle.times(3 * rest * share * share))
                .plus(tip.times(share * share * share));
    }
}
