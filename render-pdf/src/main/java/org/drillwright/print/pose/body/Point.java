package org.drillwright.print.pose.body;

/**
 * A place, or a way from one place to another, in metres.
 *
 * @param x along the piste; the leader looks to where it grows
 * @param y away from the eye
 * @param z up; the floor is 0
 */
public record Point(double x, double y, double z) {

    public static final Point ORIGIN = new Point(0, 0, 0);

    public static final Point UP = new Point(0, 0, 1);

    public Point plus(Point other) {
        return new Point(x + other.x, y + other.y, z + other.z);
    }

    public Point minus(Point other) {
        return new Point(x - other.x, y - other.y, z - other.z);
    }

    public Point times(double factor) {
        return new Point(factor * x, factor * y, factor * z);
    }

    public double dot(Point other) {
        return x * other.x + y * other.y + z * other.z;
    }

    public Point cross(Point other) {
        return new Point(y * other.z - z * other.y, z * other.x - x * other.z, x * other.y - y * other.x);
    }

    public double length() {
        return Math.sqrt(dot(this));
    }

    /** The same direction, one metre long; this must have a length. */
    public Point unit() {
        return times(1 / length());
    }

    /** In metres. */
    public double distance(Point other) {
        return minus(other).length();
    }

    /** On the way to another place, 0 being here and 1 there. */
    public Point towards(Point other, double share) {
        return plus(other.minus(this).times(share));
    }

    /** What is left of this direction square to another one, one metre long. */
    public Point squareTo(Point other) {
        Point axis = other.unit();
        return minus(axis.times(dot(axis))).unit();
    }
}
