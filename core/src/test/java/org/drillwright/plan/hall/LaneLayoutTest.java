package org.drillwright.plan.hall;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.drillwright.plan.roster.Hall;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Halls worked out by hand; the sizes of halls and lanes are examples, not advice. */
class LaneLayoutTest {

    @ParameterizedTest(name = "{0} x {1} cm")
    @CsvSource({
        // length, width, lane, lane's width, side gap, end gap, side margin, end margin: lanes along, across
        "1800, 1000, 600, 200, 100, 200, 100, 100, 6, 5",
        "1800, 1000, 600, 200, 150, 200, 100, 100, 4, 5",
        "1800, 999, 600, 200, 100, 200, 100, 100, 4, 5",
        "3300, 1800, 1400, 200, 250, 300, 100, 200, 4, 7",
        "900, 500, 600, 200, 100, 200, 100, 100, 1, 0",
        "300, 300, 600, 200, 100, 200, 100, 100, 0, 0"
    })
    void lanes_of_a_hall(
            int length,
            int width,
            int lane,
            int laneWidth,
            int side,
            int end,
            int sideMargin,
            int endMargin,
            int along,
            int across) {
        Hall hall = new Hall(length, width, lane, laneWidth, side, end, sideMargin, endMargin);
        assertEquals(along, LaneLayout.along(hall).count());
        assertEquals(across, LaneLayout.across(hall).count());
        LaneLayout best = LaneLayout.of(hall);
        assertTrue(best.count() >= Math.max(along, across));
        assertEquals(best.count(), best.lanes().size());
    }

    /**
     * By hand, lanes of 6 x 2 m, 1 m side by side, 2 m end to end, 1 m to each wall. 21 x 10 m: three abreast need 1 + 8 + 1 m,
     * two rows 1 + 6 + 2 + 6 m; behind 2 m more there are 21 - 17 - 1 = 3 m left, where one lies across. All one way there are
     * six, along as across: 6 x 2 + 5 + 2 = 19 m, and a seventh would need 22. 10 x 21 m: four abreast take 1 + 11 m, and behind 2 m
     * more three lie the other way in the 7 m up to the wall.
     */
    @ParameterizedTest(name = "{0} x {1} cm")
    @CsvSource({
        "2100, 1000, 6, 7, '7 lanes fit, 3 abreast along the hall and 1 turned: 14 people at once.'",
        "1000, 2100, 6, 7, '7 lanes fit, 4 abreast along the hall and 3 turned: 14 people at once.'",
        "2199, 799, 4, 4, '4 lanes fit, 2 abreast along the hall: 8 people at once.'"
    })
    void turned_lanes_fill_what_is_left(int length, int width, int oneWay, int best, String said) {
        Hall hall = Hall.of(length, width);
        assertEquals(
                oneWay,
                Math.max(LaneLayout.along(hall).count(), LaneLayout.across(hall).count()));
        LaneLayout layout = LaneLayout.of(hall);
        assertEquals(best, layout.count());
        assertTrue(
                layout.sentence().english().startsWith(said), layout.sentence().english());
    }

    @Test
    void ten_pairs_on_six_lanes_take_two_waves() {
        LaneLayout layout = LaneLayout.of(Hall.of(1800, 1000));
        assertEquals(2, layout.waves(10));
        assertEquals(1, layout.waves(6));
        assertEquals(0, layout.waves(0));
        assertTrue(layout.sentence().english().startsWith("6 lanes fit, 3 abreast along the hall: 12 people at once."));
        assertTrue(layout.sentence().english().endsWith("local rules and your own risk assessment decide."));
    }

    @Test
    void a_hall_too_small_says_what_a_lane_needs() {
        assertTrue(LaneLayout.of(Hall.of(300, 300))
                .sentence()
                .english()
                .startsWith("No lane fits: one lane needs at least 8 m x 4 m."));
    }

    /** No lane leaves the hall or comes nearer to a wall or to another lane than it may. */
    @Property
    void lanes_keep_their_distance(
            @ForAll @IntRange(min = 1, max = 4000) int length,
            @ForAll @IntRange(min = 1, max = 3000) int width,
            @ForAll @IntRange(max = 300) int gap) {
        Hall hall = Hall.of(length, width).withSideGap(gap);
        LaneLayout layout = LaneLayout.of(hall);
        for (LaneLayout.Lane one : layout.lanes()) {
            assertTrue(one.x() >= 100 && one.x() + one.length() + 100 <= length);
            assertTrue(one.y() >= 100 && one.y() + one.width() + 100 <= width);
            for (LaneLayout.Lane other : layout.lanes()) {
                boolean sideways = one.length() > one.width();
                boolean alike = sideways == other.length() > other.width();
                int either = Math.max(gap, hall.endGap());
                int alongX = !alike ? either : sideways ? hall.endGap() : gap;
                int alongY = !alike ? either : sideways ? gap : hall.endGap();
                boolean near = one.x() < other.x() + other.length() + alongX
                        && other.x() < one.x() + one.length() + alongX
                        && one.y() < other.y() + other.width() + alongY
                        && other.y() < one.y() + one.width() + alongY;
                assertFalse(near && !one.equals(other), () -> one + " " + other);
            }
        }
    }
}
