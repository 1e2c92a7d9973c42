package org.drillwright.plan.hall;

import java.util.ArrayList;
import java.util.Collections;
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
        for (int row = 0; row < layout.rows(); row++) {
            List<LaneLayout.Lane> lanes =
                    new ArrayList<>(layout.lanes().subList(row * layout.abreast(), (row + 1) * layout.abreast()));
            if (row % 2 == 1) {
                Collections.reverse(lanes);
            }
            walk.addAll(lanes);
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

    public int waves() {
        return places.isEmpty() ? 0 : places.get(0).size();
    }
}
