package org.drillwright.plan.hall;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Places of a class on the lanes of a hall. Places that follow each other lie side by side: every second row is numbered
 * backwards, so that nobody walks across the hall but who goes from one end of the line to the other.
 *
 * @param places for each lane that is used, in walking order, the places worked there, one in each wave
 */
public record Floor(LaneLayout layout, List<LaneLayout.Lane> lanes, List<List<Integer>> places) {

    public Floor {
        lanes = List.copyOf(lanes);
        places = List.copyOf(places);
    }

    /** @param count how many places a round has */
    public static Floor of(LaneLayout layout, int count) {
        List<LaneLayout.Lane> walk = new ArrayList<>();
        for (LaneLayout.Block block : layout.blocks()) {
            walk.addAll(nearest(block, walk));
        }
        List<List<Integer>> places = new ArrayList<>();
        for (int lane = 0; lane < Math.min(walk.size(), count); lane++) {
            int first = lane + 1;
            places.add(IntStream.iterate(first, place -> place <= count, place -> place + walk.size())
                    .boxed()
                    .toList());
        }
        return new Floor(layout, walk, places);
    }

    /** The block's lanes to and fro, begun at that corner which is nearest to where one comes from. */
    private static List<LaneLayout.Lane> nearest(LaneLayout.Block block, List<LaneLayout.Lane> before) {
        List<List<LaneLayout.Lane>> ways = new ArrayList<>();
        for (boolean lastRow : List.of(false, true)) {
            for (boolean lastColumn : List.of(false, true)) {
                ways.add(toAndFro(block, lastRow, lastColumn));
            }
        }
        return before.isEmpty()
                ? ways.get(0)
                : Collections.min(
                        ways, Comparator.comparingLong(way -> between(before.get(before.size() - 1), way.get(0))));
    }

    private static List<LaneLayout.Lane> toAndFro(LaneLayout.Block block, boolean lastRow, boolean lastColumn) {
        List<LaneLayout.Lane> walk = new ArrayList<>();
        for (int at = 0; at < block.rows(); at++) {
            int row = lastRow ? block.rows() - 1 - at : at;
            List<LaneLayout.Lane> lanes =
                    new ArrayList<>(block.lanes().subList(row * block.abreast(), (row + 1) * block.abreast()));
            if (at % 2 == (lastColumn ? 0 : 1)) {
                Collections.reverse(lanes);
            }
            walk.addAll(lanes);
        }
        return walk;
    }

    /** From middle to middle, squared and doubled. */
    private static long between(LaneLayout.Lane one, LaneLayout.Lane other) {
        long x = 2L * one.x() + one.length() - 2L * other.x() - other.length();
        long y = 2L * one.y() + one.width() - 2L * other.y() - other.width();
        return x * x + y * y;
    }

    public int waves() {
        return places.isEmpty() ? 0 : places.get(0).size();
    }
}
