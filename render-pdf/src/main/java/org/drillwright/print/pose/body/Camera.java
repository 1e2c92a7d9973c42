package org.drillwright.print.pose.body;

/**
 * How places come to be seen on paper: parallel rays, everything to one scale.
 *
 * @param right how far to the right of the paper a metre of each axis goes
 * @param down how far down it goes
 * @param away the direction in which the eye looks
 */
public record Camera(Point right, Point down, Point away) {

    /** Degrees by which the eye stands round towards the leader's back, and over the heads. */
    private static final double ROUND = Math.toRadians(8);

    private static final double OVER = Math.toRadians(15);

    /** Over the head of the attacker, in the inset. */
    private static final double INSET_OVER = Math.toRadians(5);

    /**
     * The picture of the two: nearly from the side, 8° round and 15° from above, sheared so that the piste is level and
     * what is upright stays upright. Tried were 0 to 30° and 12 to 25°, judged by eye: from 10° on septime hides the
     * point that it carries aside, at 0° the feet look like sticks.
     */
    public static Camera oblique() {
        double cos = Math.cos(ROUND);
        double sin = Math.sin(ROUND);
        return new Camera(
                new Point(cos, -sin, 0),
                new Point(0, -Math.sin(OVER) / cos, -Math.cos(OVER)),
                new Point(sin * Math.cos(OVER), cos * Math.cos(OVER), -Math.sin(OVER)));
    }

    /**
     * As a person is seen by the partner.
     *
     * @param ahead the direction in which that person looks
     */
    public static Camera facing(Point ahead) {
        double side = -ahead.x();
        double cos = Math.cos(INSET_OVER);
        double sin = Math.sin(INSET_OVER);
        return new Camera(new Point(0, -side, 0), new Point(-side * sin, 0, -cos), new Point(side * cos, 0, -sin));
    }

    public PaperPoint see(Point point) {
        return new PaperPoint(right.dot(point), down.dot(point));
    }

    /** How far from the eye, in metres from a plane through the origin; more is farther. */
    public double depth(Point point) {
        return away.dot(point);
    }
}
