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

    /**
     * A blade that is bent upward between its ends, as an arc of a circle that keeps the blade's length.
     *
     * @param length of the blade; where it is no longer than the chord, the blade is straight and ends short of the tip
     */
    public static Blade bent(Point bell, Point tip, double length) {
        double chord = bell.distance(tip);
        if (chord >= length) {
            return straight(bell, bell.towards(tip, length / chord));
        }
        double half = halfAngle(length / chord);
        double radius = chord / (2 * Math.sin(half));
        double handle = 4.0 / 3 * Math.tan(half / 2) * radius;
        Point along = tip.minus(bell).unit();
        Point up = Point.UP.squareTo(along);
        Point out = along.times(Math.cos(half)).plus(up.times(Math.sin(half)));
        Point in = along.times(Math.cos(half)).minus(up.times(Math.sin(half)));
        return new Blade(bell, bell.plus(out.times(handle)), tip.minus(in.times(handle)), tip);
    }

    /** Half the angle of the arc that is so many times longer than its chord. */
    private static double halfAngle(double ratio) {
        double low = 0;
        double high = Math.PI * 0.9;
        for (int step = 0; step < 50; step++) {
            double middle = (low + high) / 2;
            if (middle / Math.sin(middle) < ratio) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    /** How far it rises over the line from the bell to the tip, in metres. */
    public double rise() {
        return at(0.5).distance(bell.towards(tip, 0.5));
    }

    /** Along the curve, in metres. */
    public double length() {
        double length = 0;
        Point before = bell;
        for (int step = 1; step <= 200; step++) {
            Point next = at(step / 200.0);
            length += before.distance(next);
            before = next;
        }
        return length;
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
