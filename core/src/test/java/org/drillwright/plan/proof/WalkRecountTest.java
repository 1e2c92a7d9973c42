package org.drillwright.plan.proof;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.drillwright.plan.proof.WalkRecount.Line;
import org.junit.jupiter.api.Test;

/** Lines walked by hand: Ash and Bo stay, Cy and Dee move; Fay rests or joins where a dash stands. */
class WalkRecountTest {

    private static final Line TWO = new Line(1, 2, List.of("Ash", "Bo"), List.of("Cy", "Dee"), "-");

    private static Recount.Sitting round(String groups) {
        return new Recount.Sitting(
                "thrust",
                Arrays.stream(groups.split(" "))
                        .map(group ->
                                new Recount.Together(List.of(group.split("-")), Optional.empty(), Optional.empty()))
                        .toList());
    }

    @Test
    void lines_that_walk_have_no_fault() {
        assertEquals(
                List.of(), WalkRecount.faults(List.of(TWO), List.of(round("Ash-Cy Dee-Bo"), round("Dee-Ash Bo-Cy"))));
    }

    @Test
    void who_did_not_walk_is_seen() {
        assertEquals(
                List.of("round 2: Ash isn't with Dee", "round 2: Bo isn't with Cy"),
                WalkRecount.faults(List.of(TWO), List.of(round("Ash-Cy Dee-Bo"), round("Ash-Cy Dee-Bo"))));
    }

    /** Of three one has nobody opposite: alone, or the third in a pair, but not in a pair. */
    @Test
    void who_rests_is_alone_or_joins_a_pair() {
        List<Line> lines = List.of(new Line(1, 1, List.of("Ash", "Bo"), List.of("Cy", "-"), "-"));
        assertEquals(List.of(), WalkRecount.faults(lines, List.of(round("Ash-Cy Bo"))));
        assertEquals(List.of(), WalkRecount.faults(lines, List.of(round("Cy-Ash-Bo"))));
        assertEquals(List.of("round 1: Bo isn't with -"), WalkRecount.faults(lines, List.of(round("Ash-Cy Bo-Dee"))));
    }

    /** Ash goes over and back, Cy over; Bo and Dee keep to their lines. */
    @Test
    void changes_of_line_are_counted() {
        Line second = new Line(3, 3, List.of("Cy", "Bo"), List.of("Ash", "Dee"), "-");
        Line third = new Line(4, 4, List.of("Ash", "Bo"), List.of("Dee", "-"), "-");
        assertEquals(Map.of("Ash", 2, "Cy", 1), WalkRecount.changes(List.of(TWO, second, third)));
    }

    /** In round 3 Ash and Cy meet for the second time; in a three the ends don't meet. */
    @Test
    void meetings_are_counted_round_by_round() {
        assertEquals(
                Map.of(3, Set.of(Set.of("Ash", "Cy"))),
                WalkRecount.again(List.of(round("Ash-Cy Bo-Dee"), round("Ash-Dee-Bo Cy"), round("Ash-Cy Dee"))));
    }
}
