package org.drillwright.print.pose.body;

/**
 * A head, or the mask round it.
 *
 * @param looking where the face looks, one metre long
 * @param up over the top of the head, square to that, one metre long
 * @param masked whether the mask is on
 */
public record Head(Point centre, Point looking, Point up, boolean masked) {

    /** Of the mask, in metres: along where it looks, to the side, up. Judged by eye, no source. */
    public static final double HALF_DEPTH = 0.122;

    public static final double HALF_WIDTH = 0.103;

    public static final double HALF_HEIGHT = 0.142;
}
