package org.drillwright.print.pose.body;

/**
 * Lengths of a body of 1.75 m, in metres. Shares of the height after Drillis and Contini, as Winter prints them in
 * Biomechanics and Motor Control of Human Movement, from memory; trunk from hip to shoulder joints.
 */
public final class Proportions {

    public static final double HEIGHT = 1.75;

    public static final double THIGH = 0.245 * HEIGHT;

    public static final double SHANK = 0.246 * HEIGHT;

    public static final double UPPER_ARM = 0.186 * HEIGHT;

    public static final double FOREARM = 0.146 * HEIGHT;

    public static final double TRUNK = 0.288 * HEIGHT;

    /** In its shoe. */
    public static final double FOOT = 0.275;

    /** The joint above the floor, with 10 mm of sole. */
    static final double ANKLE = 0.078;

    /** The ankle ahead of the heel. */
    static final double HEEL = 0.055;

    /** From the spine to a hip joint. */
    static final double HALF_HIPS = 0.052 * HEIGHT;

    /** From the spine to a shoulder joint. */
    static final double HALF_SHOULDERS = 0.105 * HEIGHT;

    /** The shoulder joints below their line. */
    static final double SHOULDER_DROP = 0.015;

    private Proportions() {}
}
