package org.drillwright.print.pose.body;

/**
 * How a person stands, in metres ahead of the front toe, to the outside and up, and in degrees. Judged by eye on drawn
 * sheets, no source.
 *
 * @param rearHeel how far ahead the rear heel is (below 0: behind)
 * @param rearToesAhead how far ahead the rear toes point for each metre that they point to the inside
 * @param pelvis between the hips: ahead, outside, up
 * @param hipTurn how far the hips are turned to the partner with the side of the sword
 * @param shoulderTurn the same of the shoulders
 * @param lean of the trunk, forward
 * @param rearKnee where the rear knee bends to: ahead, outside, up
 * @param rearFootLifted whether the rear foot is off the floor
 */
public record Posture(
        double rearHeel,
        double rearToesAhead,
        Point pelvis,
        double hipTurn,
        double shoulderTurn,
        double lean,
        Point rearKnee,
        boolean rearFootLifted) {

    public static final Posture ON_GUARD =
            new Posture(-0.80, -0.05, new Point(-0.50, -0.035, 0.755), 48, 56, 2, new Point(0.35, -0.9, 0.1), false);

    public static final Posture HALF_LUNGE =
            new Posture(-1.12, 0, new Point(-0.57, -0.03, 0.67), 55, 66, 6, new Point(0.2, -0.6, 0.5), false);

    /** The hips as far back and as high as the rear leg lets them be, whose bones else would stretch. */
    public static final Posture LUNGE =
            new Posture(-1.42, 0.10, new Point(-0.626, -0.03, 0.544), 62, 74, 10, new Point(0.2, -0.6, 0.5), false);

    public static final Posture STANDING =
            new Posture(-0.30, -0.12, new Point(-0.235, -0.03, 0.925), 35, 38, 0, new Point(0.1, -1, 0), false);

    public static final Posture BALANCE =
            new Posture(-0.52, -0.05, new Point(-0.26, -0.035, 0.755), 48, 56, 2, new Point(0.35, -0.9, 0.1), true);

    /** The same, leaning further forward by so many degrees. */
    public Posture leaning(double further) {
        return with(pelvis, lean + further);
    }

    /** The same, the weight brought further to the front foot by so many metres. */
    public Posture forward(double further) {
        return with(pelvis.plus(new Point(further, 0, 0)), lean);
    }

    private Posture with(Point hips, double leans) {
        return new Posture(rearHeel, rearToesAhead, hips, hipTurn, shoulderTurn, leans, rearKnee, rearFootLifted);
    }
}
