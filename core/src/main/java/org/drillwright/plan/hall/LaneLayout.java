package org.drillwright.plan.hall;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.plan.roster.Hall;

/**
 * Lanes in a hall, all one way.
 *
 * @param lengthwise whether the lanes lie along the hall's length
 * @param abreast lanes side by side
 * @param rows lanes end to end
 * @param lanes where each lies
 */
public record LaneLayout(Hall hall, boolean lengthwise, int abreast, int rows, List<Lane> lanes) {

    /**
     * A lane's rectangle, in centimetres from a corner of the hall.
     *
     * @param x along the hall's length
     * @param y along the hall's width
     * @param length along the hall's length
     * @param width along the hall's width
     */
    public record Lane(int x, int y, int length, int width) {}

    public LaneLayout {
        lanes = List.copyOf(lanes);
    }

    /** The way that holds more lanes; along the length if both hold as many. */
    public static LaneLayout of(Hall hall) {
        LaneLayout along = along(hall);
        LaneLayout across = across(hall);
        return across.count() > along.count() ? across : along;
    }

    /** All lanes along the hall's length. */
    static LaneLayout along(Hall hall) {
        return laid(hall, true, hall.length(), hall.width());
    }

    /** All lanes across it. */
    static LaneLayout across(Hall hall) {
        return laid(hall, false, hall.width(), hall.length());
    }

    private static LaneLayout laid(Hall hall, boolean lengthwise, int run, int breadth) {
        int abreast = fitting(breadth - 2 * hall.sideMargin(), hall.laneWidth(), hall.sideGap());
        int rows = fitting(run - 2 * hall.endMargin(), hall.laneLength(), hall.endGap());
        List<Lane> lanes = new ArrayList<>();
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < abreast; column++) {
                int end = hall.endMargin() + row * (hall.laneLength() + hall.endGap());
                int side = hall.sideMargin() + column * (hall.laneWidth() + hall.sideGap());
                lanes.add(
                        lengthwise
                                ? new Lane(end, side, hall.laneLength(), hall.laneWidth())
                                : new Lane(side, end, hall.laneWidth(), hall.laneLength()));
            }
        }
        return new LaneLayout(hall, lengthwise, abreast, rows, lanes);
    }

    private static int fitting(int space, int size, int gap) {
        return Math.max(0, Math.floorDiv(space + gap, size + gap));
    }

    public int count() {
        return abreast * rows;
    }

    /** How often a round must be worked so that all have had a lane; 0 if there is no lane or nobody. */
    public int waves(int pairs) {
        return count() == 0 ? 0 : (pairs + count() - 1) / count();
    }

    /** What to say of it, in one sentence. */
    public String sentence() {
        if (count() == 0) {
            return "No lane fits: one lane needs at least " + metres(hall.laneLength() + 2 * hall.endMargin()) + " x "
                    + metres(hall.laneWidth() + 2 * hall.sideMargin()) + ". " + DEFERS;
        }
        return count() + (count() == 1 ? " lane fits" : " lanes fit") + ", " + abreast + " abreast"
                + (lengthwise ? " along" : " across") + " the hall: " + 2 * count() + " people at once. " + DEFERS;
    }

    private static final String DEFERS =
            "Clear spaces are common practice only: local rules and your own risk assessment decide.";

    private static String metres(int centimetres) {
        return java.math.BigDecimal.valueOf(centimetres, 2).stripTrailingZeros().toPlainString() + " m";
    }
}
