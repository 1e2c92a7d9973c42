package org.drillwright.plan.hall;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.drillwright.plan.roster.Hall;
import org.junit.jupiter.api.Test;

/** The worked hall of 18 x 10 m: six lanes, three abreast in two rows. */
class FloorTest {

    private final LaneLayout layout = LaneLayout.of(Hall.of(1_800, 1_000));

    @Test
    void every_second_row_is_numbered_backwards() {
        Floor floor = Floor.of(layout, 6);
        assertEquals(
                List.of("100 100", "100 400", "100 700", "900 700", "900 400", "900 100"),
                floor.lanes().stream().map(lane -> lane.x() + " " + lane.y()).toList());
    }

    @Test
    void ten_pairs_work_in_two_waves() {
        Floor floor = Floor.of(layout, 10);
        assertEquals(2, floor.waves());
        assertEquals(
                List.of(List.of(1, 7), List.of(2, 8), List.of(3, 9), List.of(4, 10), List.of(5), List.of(6)),
                floor.places());
    }

    @Test
    void nobody_needs_no_lane() {
        assertEquals(0, Floor.of(layout, 0).waves());
        assertEquals(List.of(), Floor.of(LaneLayout.of(Hall.of(300, 300)), 4).places());
    }
}
