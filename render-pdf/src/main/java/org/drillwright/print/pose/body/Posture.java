package org.drillwright.print.pose.body;

/**
 * How a person stands, in metres ahead of the place of the front toe, to the outside and up, and in degrees. Judged by eye
 * on drawn sheets, no source.
 *
 * @param front the foot under the sword; but for one that is off its place its toe is where all of this is measured from
 * @param pelvis between the hips: ahead, outside, up
 * @param hipTurn how far the hips are turned to the partner with the side of the sword
 * @param shoulderTurn the same of the shoulders
 * @param lean of the trunk, forward
 * @param rearKnee where the rear knee bends to: ahead, outside, up
 */
public record Posture(
        Foot front, Foot rear, Point pelvis, double hipTurn, double shoulderTurn, double lean, Point rearKnee) {

    /**
     * A foot, with its shoe.
     *
     * @param heel on the floor if nothing is up
     * @param toes where the toes point to
     */
    record Foot(Point heel, Point toes) {

        static final Foot AHEAD = new Foot(new Point(-Proportions.FOOT, 0, 0), new Point(1, 0, 0));

        /** Flat on the floor, square to the other. */
        static Foot across(double heel, double toesAhead) {
            return new Foot(new Point(heel, 0, 0), new Point(toesAhead, -1, 0));
        }
    }

    private static final Point GUARD_KNEE = new Point(0.35, -0.9, 0.1);

    private static final Point LUNGE_KNEE = new Point(0.2, -0.6, 0.5);

    public static final Posture ON_GUARD =
            new Posture(Foot.AHEAD, Foot.across(-0.80, -0.05), new Point(-0.50, -0.035, 0.755), 48, 56, 2, GUARD_KNEE);

    /** On guard with the rear foot brought up: as far as a step. */
    public static final Posture GATHERED =
            new Posture(Foot.AHEAD, Foot.across(-0.38, -0.05), new Point(-0.235, -0.035, 0.755), 48, 56, 4, GUARD_KNEE);

    public static final Posture HALF_LUNGE =
            new Posture(Foot.AHEAD, Foot.across(-1.12, 0), new Point(-0.57, -0.03, 0.67), 55, 66, 6, LUNGE_KNEE);

    /** The hips as far back and as high as the rear leg lets them be, whose bones else would stretch. */
    public static final Posture LUNGE =
            new Posture(Foot.AHEAD, Foot.across(-1.42, 0.10), new Point(-0.626, -0.03, 0.544), 62, 74, 10, LUNGE_KNEE);

    /** The front leg has pushed off, the body falls ahead over it and the rear foot passes. */
    public static final Posture FLECHE = new Posture(
            new Foot(new Point(-1.50, 0, 0.17), new Point(0.86, 0, -0.5)),
            new Foot(new Point(-0.78, -0.08, 0.16), new Point(1, -0.1, 0.1)),
            new Point(-0.86, -0.03, 0.80),
            60,
            76,
            36,
            new Point(1, -0.1, 0.4));

    /** Sunk between the feet, the trunk bent ahead below a blade that comes high. */
    public static final Posture DUCKED =
            new Posture(Foot.AHEAD, Foot.across(-0.92, -0.05), new Point(-0.56, -0.035, 0.44), 58, 70, 52, GUARD_KNEE);

    /** The rear foot behind and across to the side of the sword, the body in profile beside the line. */
    public static final Posture ASIDE = new Posture(
            Foot.AHEAD,
            new Foot(new Point(-0.84, 0.42, 0), new Point(0.3, -1, 0)),
            new Point(-0.62, 0.22, 0.67),
            84,
            92,
            -21,
            new Point(0.6, -0.6, 0.1));

    /** Sunk on the rear leg, the trunk drawn back out of the way of a stroke. */
    public static final Posture DRAWN_BACK =
            new Posture(Foot.AHEAD, Foot.across(-0.80, -0.05), new Point(-0.66, -0.035, 0.60), 48, 56, -20, GUARD_KNEE);

    /** The front leg taken back to the other, out of the way of a stroke at it. */
    public static final Posture LEG_WITHDRAWN = new Posture(
            new Foot(new Point(-0.76, 0, 0), new Point(1, 0, 0)),
            Foot.across(-0.80, -0.05),
            new Point(-0.68, -0.03, 0.90),
            48,
            56,
            14,
            GUARD_KNEE);

    public static final Posture STANDING = new Posture(
            Foot.AHEAD, Foot.across(-0.30, -0.12), new Point(-0.235, -0.03, 0.925), 35, 38, 0, new Point(0.1, -1, 0));

    /** The same, leaning further forward by so many degrees. */
    public Posture leaning(double further) {
        return with(pelvis, lean + further);
    }

    /** The same, the weight brought further to the front foot by so many metres. */
    public Posture forward(double further) {
        return with(pelvis.plus(new Point(further, 0, 0)), lean);
    }

    private Posture with(Point hips, double leans) {
        return new Posture(front, rear, hips, hipTurn, shoulderTurn, leans, rearKnee);
    }
}
