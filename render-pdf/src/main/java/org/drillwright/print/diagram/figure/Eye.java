package org.drillwright.print.diagram.figure;

import org.drillwright.print.diagram.curve.Dot;
import org.drillwright.print.pose.body.Camera;
import org.drillwright.print.pose.body.PaperPoint;
import org.drillwright.print.pose.body.Point;

/**
 * Where on paper a place of the world is seen.
 *
 * @param scale points a metre
 */
public record Eye(Camera camera, double scale) {

    public Dot see(Point point) {
        PaperPoint spot = camera.see(point);
        return new Dot(scale * spot.x(), scale * spot.y());
    }

    /** How far from the eye, in metres; more is farther. */
    public double depth(Point point) {
        return camera.depth(point);
    }
}
