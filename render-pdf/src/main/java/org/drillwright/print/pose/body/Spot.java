package org.drillwright.print.pose.body;

/**
 * A place on paper, in metres of the world; whoever draws multiplies by points a metre.
 *
 * @param x to the right
 * @param y down
 */
public record Spot(double x, double y) {

    public double distance(Spot other) {
        return Math.hypot(x - other.x, y - other.y);
    }
}
