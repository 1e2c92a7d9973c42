package org.drillwright.print.pose.body;

import org.drillwright.model.Side;

/**
 * The axes of a person: ahead, to the side of the sword, up. A left-hander has the side of the sword on the other side,
 * and nothing else is different.
 *
 * @param toe the tip of the front shoe, on the floor
 */
public record Axes(Point toe, Point ahead, Point outside) {

    /**
     * The axes of one of the two; the leader looks to where x grows.
     *
     * @param toe where the front shoe ends, along the piste in metres
     */
    public static Axes of(Side side, boolean leftHanded, double toe) {
        double ahead = side == Side.LEADER ? 1 : -1;
        double outside = leftHanded ? ahead : -ahead;
        return new Axes(new Point(toe, 0, 0), new Point(ahead, 0, 0), new Point(0, outside, 0));
    }

    /** A direction, by its parts ahead, outside and up. */
    public Point way(double ahead, double outside, double up) {
        return this.ahead.times(ahead).plus(this.outside.times(outside)).plus(Point.UP.times(up));
    }

    /** A place, so far ahead of the front toe, to the outside and up. */
    public Point at(double ahead, double outside, double up) {
        return toe.plus(way(ahead, outside, up));
    }

    /** From the front to the chest, where the line from the rear side to the side of the sword is turned round the spine. */
    Point front(Point line, Point spine) {
        boolean leftHanded = ahead.cross(outside).z() > 0;
        return leftHanded ? line.cross(spine) : spine.cross(line);
    }
}
