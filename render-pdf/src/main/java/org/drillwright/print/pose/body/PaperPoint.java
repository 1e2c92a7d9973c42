package org.drillwright.print.pose.body;

/**
 * A place on paper, in metres of the world; whoever draws multiplies by points a metre.
 *
 * @param x to the right
 * @param y down
 */
public record PaperPoint(double x, double y) {

    public double distance(PaperPoint other) {
        return Math.hypot(x - other.x, y - other.y);
    }
}
