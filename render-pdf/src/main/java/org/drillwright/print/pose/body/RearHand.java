package org.drillwright.print.pose.body;

/**
 * Where the rear hand is, from the rear shoulder: ahead, outside, up. Judged by eye, no source.
 *
 * @param wrist from the shoulder
 * @param elbow where the elbow bends to
 */
public record RearHand(Point wrist, Point elbow) {

    /** Raised behind the head, on guard with a thrusting weapon. */
    public static final RearHand UP = new RearHand(new Point(-0.36, -0.16, 0.30), new Point(-1, -0.2, -0.9));

    /** Thrown back in the lunge. */
    public static final RearHand BACK = new RearHand(new Point(-0.545, -0.06, -0.17), new Point(-0.3, 0, -1));

    /** Towards the floor beside a body that ducks. */
    public static final RearHand TO_THE_FLOOR = new RearHand(new Point(0.10, -0.16, -0.52), new Point(-1, -0.5, 0));

    /** On the hip, at sabre. */
    public static final RearHand HIP = new RearHand(new Point(0.12, -0.13, -0.40), new Point(-1, -0.7, 0));

    /** Before the body, with the mask. */
    public static final RearHand WITH_MASK = new RearHand(new Point(0.16, -0.14, -0.30), new Point(-1, -0.5, -0.2));

    /** Hanging down, at attention with the mask on. */
    public static final RearHand DOWN = new RearHand(new Point(0.03, -0.10, -0.56), new Point(-1, -0.3, 0));
}
