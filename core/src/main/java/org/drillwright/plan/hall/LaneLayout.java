package org.drillwright.plan.hall;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.plan.roster.Hall;
import org.drillwright.wording.Message;

/**
 * Lanes in a hall: all one way, or some of them turned where more fit so.
 *
 * @param blocks of lanes that lie the same way; one or two, or none if no lane fits
 */
public record LaneLayout(Hall hall, List<Block> blocks) {

    /**
     * A lane's rectangle, in centimetres from a corner of the hall.
     *
     * @param x along the hall's length
     * @param y along the hall's width
     * @param length along the hall's length
     * @param width along the hall's width
     */
    public record Lane(int x, int y, int length, int width) {}

    /**
     * Lanes side by side and end to end.
     *
     * @param lengthwise whether they lie along the hall's length
     * @param abreast lanes side by side
     * @param rows lanes end to end
     * @param lanes where each lies, row after row
     */
    public record Block(boolean lengthwise, int abreast, int rows, List<Lane> lanes) {
        public Block {
            lanes = List.copyOf(lanes);
        }

        int count() {
            return lanes.size();
        }
    }

    public LaneLayout {
        blocks = List.copyOf(blocks);
    }

    /**
     * The way that holds most lanes: of several along the length, else across it, else the one with the most lanes of one
     * way. Two blocks lie on either side of a line through the whole hall.
     */
    public static LaneLayout of(Hall hall) {
        List<LaneLayout> ways = new ArrayList<>(List.of(along(hall), across(hall)));
        for (boolean lengthwise : List.of(true, false)) {
            LaneFit ground = new LaneFit(hall, lengthwise);
            for (int rows = ground.rows(); rows > 0; rows--) {
                ways.add(new LaneLayout(hall, ground.behindRows(rows)));
            }
            for (int abreast = ground.abreast(); abreast > 0; abreast--) {
                ways.add(new LaneLayout(hall, ground.besideLanes(abreast)));
            }
        }
        return ways.stream()
                .reduce((one, other) -> other.count() > one.count() ? other : one)
                .orElseThrow();
    }

    /** All lanes along the hall's length. */
    static LaneLayout along(Hall hall) {
        return new LaneLayout(hall, new LaneFit(hall, true).all());
    }

    /** All lanes across it. */
    static LaneLayout across(Hall hall) {
        return new LaneLayout(hall, new LaneFit(hall, false).all());
    }

    public List<Lane> lanes() {
        return blocks.stream().flatMap(block -> block.lanes().stream()).toList();
    }

    public int count() {
        return blocks.stream().mapToInt(Block::count).sum();
    }

    /** How often a round must be worked so that all have had a lane; 0 if there is no lane or nobody. */
    public int waves(int pairs) {
        return count() == 0 ? 0 : (pairs + count() - 1) / count();
    }

    /** What to say of it, in one sentence. */
    public Message sentence() {
        if (count() == 0) {
            return Message.of(
                            LaneLayout.class,
                            "no.lane",
                            Message.metres(hall.laneLength() + 2 * hall.endMargin()),
                            Message.metres(hall.laneWidth() + 2 * hall.sideMargin()))
                    .then(DEFERS);
        }
        Block first = blocks.get(0);
        int turned = count() - first.count();
        String way = (first.lengthwise() ? "along" : "across") + (turned == 0 ? "" : ".turned");
        Message lying = Message.of(LaneLayout.class, way, first.abreast(), turned);
        return Message.counted(LaneLayout.class, "lanes", count(), lying, 2 * count())
                .then(DEFERS);
    }

    private static final Message DEFERS = Message.of(LaneLayout.class, "defers");
}
