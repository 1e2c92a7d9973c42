package org.drillwright.plan.hall;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.plan.hall.LaneLayout.Block;
import org.drillwright.plan.hall.LaneLayout.Lane;
import org.drillwright.plan.roster.Hall;

/**
 * The ground of a hall seen along the lanes of its first block: how many lanes of either way find room on it. Between the
 * ends of the one and the sides of the other there is the wider of the two clear spaces.
 *
 * @param lengthwise whether the first block's lanes lie along the hall's length
 */
record LaneFit(Hall hall, boolean lengthwise) {

    /** Along the first block's lanes. */
    private int run() {
        return lengthwise ? hall.length() : hall.width();
    }

    private int breadth() {
        return lengthwise ? hall.width() : hall.length();
    }

    private int apart() {
        return Math.max(hall.sideGap(), hall.endGap());
    }

    int rows() {
        return rows(run() - 2 * hall.endMargin());
    }

    int abreast() {
        return abreast(breadth() - 2 * hall.sideMargin());
    }

    private int rows(int space) {
        return fitting(space, hall.laneLength(), hall.endGap());
    }

    private int abreast(int space) {
        return fitting(space, hall.laneWidth(), hall.sideGap());
    }

    private static int fitting(int space, int size, int gap) {
        return Math.max(0, Math.floorDiv(space + gap, size + gap));
    }

    /** All lanes the same way. */
    List<Block> all() {
        return filled(first(abreast(), rows()));
    }

    /** So many rows of the first way, and behind them what fits of turned lanes. */
    List<Block> behindRows(int rows) {
        int used = hall.endMargin() + rows * hall.laneLength() + (rows - 1) * hall.endGap() + apart();
        int abreast = abreast(run() - hall.sideMargin() - used);
        int turned = rows(breadth() - 2 * hall.endMargin());
        return filled(first(abreast(), rows), turned(abreast, turned, used, hall.endMargin()));
    }

    /** So many lanes of the first way side by side, and beside them what fits of turned lanes. */
    List<Block> besideLanes(int abreast) {
        int used = hall.sideMargin() + abreast * hall.laneWidth() + (abreast - 1) * hall.sideGap() + apart();
        int turned = rows(breadth() - hall.endMargin() - used);
        return filled(
                first(abreast, rows()),
                turned(abreast(run() - 2 * hall.sideMargin()), turned, hall.sideMargin(), used));
    }

    private static List<Block> filled(Block... blocks) {
        return List.of(blocks).stream().filter(block -> block.count() > 0).toList();
    }

    private Block first(int abreast, int rows) {
        List<Lane> lanes = new ArrayList<>();
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < abreast; column++) {
                lanes.add(lane(
                        hall.endMargin() + row * (hall.laneLength() + hall.endGap()),
                        hall.sideMargin() + column * (hall.laneWidth() + hall.sideGap()),
                        hall.laneLength(),
                        hall.laneWidth()));
            }
        }
        return new Block(lengthwise, abreast, rows, lanes);
    }

    /** @param along where they begin along the first block's lanes, in centimetres, and {@code aside} across these */
    private Block turned(int abreast, int rows, int along, int aside) {
        List<Lane> lanes = new ArrayList<>();
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < abreast; column++) {
                lanes.add(lane(
                        along + column * (hall.laneWidth() + hall.sideGap()),
                        aside + row * (hall.laneLength() + hall.endGap()),
                        hall.laneWidth(),
                        hall.laneLength()));
            }
        }
        return new Block(!lengthwise, abreast, rows, lanes);
    }

    private Lane lane(int along, int aside, int length, int width) {
        return lengthwise ? new Lane(along, aside, length, width) : new Lane(aside, along, width, length);
    }
}
