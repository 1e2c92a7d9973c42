package org.drillwright.print.pose.body;

import java.util.ArrayList;
import java.util.List;

/**
 * A trunk, from the hips to the shoulders.
 *
 * @param pelvis between the hip joints
 * @param shoulders where the line of the shoulders crosses the spine
 * @param hipLine from the rear hip to the hip of the sword side, one metre long, square to the spine
 * @param shoulderLine from the rear shoulder to that of the sword side, the same
 * @param hipFront out of the belly, square to the spine and to the line of the hips, one metre long
 */
public record Trunk(Point pelvis, Point shoulders, Point hipLine, Point shoulderLine, Point hipFront) {

    /** Along the spine, 0 hips, 1 shoulders; half width, half depth in metres. Judged by eye, no source. */
    private static final double[][] SLICES = {
        {-0.20, 0.158, 0.122},
        {-0.05, 0.178, 0.134},
        {0.15, 0.168, 0.130},
        {0.36, 0.160, 0.122},
        {0.60, 0.178, 0.130},
        {0.80, 0.190, 0.128},
        {0.93, 0.186, 0.108},
        {1.01, 0.135, 0.092},
        {1.07, 0.078, 0.074},
        {1.16, 0.064, 0.064}
    };

    /**
     * An ellipse across the spine.
     *
     * @param width from the middle to the side of the sword
     * @param depth from the middle to the front
     */
    public record Slice(Point middle, Point width, Point depth) {}

    /** Along the spine, one metre long. */
    public Point up() {
        return shoulders.minus(pelvis).unit();
    }

    /**
     * A shoulder joint.
     *
     * @param side 1 on the side of the sword, -1 on the other
     */
    Point shoulder(int side) {
        return shoulders
                .plus(shoulderLine.times(side * Proportions.HALF_SHOULDERS))
                .minus(up().times(Proportions.SHOULDER_DROP));
    }

    /**
     * A hip joint.
     *
     * @param side 1 on the side of the sword, -1 on the other
     */
    Point hip(int side) {
        return pelvis.plus(hipLine.times(side * Proportions.HALF_HIPS));
    }

    /** From the hem of the jacket to the neck. */
    public List<Slice> slices() {
        List<Slice> slices = new ArrayList<>();
        for (double[] row : SLICES) {
            slices.add(slice(row[0], row[1], row[2]));
        }
        return slices;
    }

    /**
     * The slice at a place.
     *
     * @param share along the spine, 0 hips, 1 shoulders
     */
    public Slice slice(double share) {
        int next = 1;
        while (next < SLICES.length - 1 && SLICES[next][0] < share) {
            next++;
        }
        double[] below = SLICES[next - 1];
        double[] above = SLICES[next];
        double part = Math.max(0, Math.min(1, (share - below[0]) / (above[0] - below[0])));
        return slice(share, below[1] + part * (above[1] - below[1]), below[2] + part * (above[2] - below[2]));
    }

    private Slice slice(double share, double width, double depth) {
        double whole = Math.atan2(shoulderLine.dot(hipFront), shoulderLine.dot(hipLine));
        double turn = whole * Math.max(0, Math.min(1, share));
        Point line = hipLine.times(Math.cos(turn)).plus(hipFront.times(Math.sin(turn)));
        Point front = hipFront.times(Math.cos(turn)).minus(hipLine.times(Math.sin(turn)));
        return new Slice(pelvis.towards(shoulders, share), line.times(width), front.times(depth));
    }
}
