package org.drillwright.print.diagram.curve;

/**
 * A place on paper, or a way from one to another, in points.
 *
 * @param x to the right
 * @param y down
 */
public record Dot(double x, double y) {

    public Dot plus(Dot other) {
        return new Dot(x + other.x, y + other.y);
    }

    public Dot minus(Dot other) {
        return new Dot(x - other.x, y - other.y);
    }

    public Dot times(double factor) {
        return new Dot(factor * x, factor * y);
    }

    public double dot(Dot other) {
        return x * other.x + y * other.y;
    }

    public double length() {
        return Math.hypot(x, y);
    }

    public double distance(Dot other) {
        return Math.hypot(x - other.x, y - other.y);
    }

    /** The same direction, one point long; to the right if this has no length. */
    public Dot unit() {
        double length = length();
        return length < 1e-12 ? new Dot(1, 0) : times(1 / length);
    }

    /** A quarter turn, to the left of who goes this way over the paper. */
    public Dot turned() {
        return new Dot(y, -x);
    }

    /** On the way to another place, 0 being here and 1 there. */
    public Dot towards(Dot other, double share) {
        return plus(other.minus(this).times(share));
    }
}
