package org.drillwright.print.pose.body;

import java.util.List;

/**
 * A leg, by its joints.
 *
 * @param heel on the floor or over it
 * @param toe the tip of the shoe
 */
public record Leg(Point hip, Point knee, Point ankle, Point heel, Point toe) {

    /** How far the calf stands out to the back, in metres. */
    private static final double CALF = 0.022;

    /** From the hip to the ankle, radii in metres, judged by eye. */
    public List<Ball> balls() {
        Point back = hip.towards(ankle, 0.5).minus(knee);
        Point calf = back.length() < 1e-6 ? Point.ORIGIN : back.unit().times(CALF);
        return List.of(
                new Ball(hip, 0.102),
                new Ball(hip.towards(knee, 0.5), 0.086),
                new Ball(knee, 0.061),
                new Ball(knee.towards(ankle, 0.32).plus(calf), 0.057),
                new Ball(knee.towards(ankle, 0.72), 0.042),
                new Ball(ankle, 0.036));
    }
}
