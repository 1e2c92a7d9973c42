package org.drillwright.print.pose.body;

import java.util.List;

/** An arm, by its joints. */
public record Arm(Point shoulder, Point elbow, Point wrist) {

    /** The angle at the elbow in degrees; 180 is straight. */
    public double elbowAngle() {
        Point up = shoulder.minus(elbow).unit();
        Point down = wrist.minus(elbow).unit();
        return Math.toDegrees(Math.acos(Math.max(-1, Math.min(1, up.dot(down)))));
    }

    /** From a quarter of the way to the spine down to the wrist, radii in metres, judged by eye. */
    public List<Ball> balls(Point shoulders) {
        return List.of(
                new Ball(shoulder.towards(shoulders, 0.25), 0.060),
                new Ball(shoulder.towards(elbow, 0.28), 0.056),
                new Ball(elbow, 0.045),
                new Ball(elbow.towards(wrist, 0.30), 0.046),
                new Ball(wrist, 0.033));
    }
}
