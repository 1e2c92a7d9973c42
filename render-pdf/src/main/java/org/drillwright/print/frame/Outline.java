package org.drillwright.print.frame;

import java.util.ArrayList;
import java.util.List;

/** Common outlines. */
public final class Outline {

    /** The control points of a quarter circle of radius 1 lie this far along: 4/3 (√2 − 1), off by 0.03 %. */
    private static final double QUARTER = 4.0 / 3 * (Math.sqrt(2) - 1);

    private Outline() {}

    /** Straight from corner to corner: x and y by turns. */
    public static List<Segment> polygon(double... corners) {
        List<Segment> outline = new ArrayList<>();
        outline.add(new Segment.Start(corners[0], corners[1]));
        for (int at = 2; at < corners.length; at += 2) {
            outline.add(new Segment.To(corners[at], corners[at + 1]));
        }
        return outline;
    }

    public static List<Segment> box(Rectangle box) {
        return polygon(box.x(), box.y(), box.right(), box.y(), box.right(), box.bottom(), box.x(), box.bottom());
    }

    public static List<Segment> circle(double x, double y, double radius) {
        double c = radius * QUARTER;
        return List.of(
                new Segment.Start(x + radius, y),
                new Segment.Curve(x + radius, y + c, x + c, y + radius, x, y + radius),
                new Segment.Curve(x - c, y + radius, x - radius, y + c, x - radius, y),
                new Segment.Curve(x - radius, y - c, x - c, y - radius, x, y - radius),
                new Segment.Curve(x + c, y - radius, x + radius, y - c, x + radius, y));
    }
}
