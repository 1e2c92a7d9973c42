package org.drillwright.check.form;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import org.drillwright.check.Judged;
import org.junit.jupiter.api.Test;

class NeedsCannotBeMetTest {

    private static final String RULE = "needs-cannot-be-met";

    private static Judged folder(Map<String, String> drills) {
        return Judged.folder("", drills);
    }

    @Test
    void a_drill_that_is_not_there_is_found() {
        assertEquals(
                List.of("error 1:13 'b'"),
                folder(Map.of("a", "needs: [a2, b]", "a2", "")).findings("a", RULE));
        assertEquals(
                List.of("error 1:13 'b'"), folder(Map.of("a", "variant-of: b")).findings("a", RULE));
    }

    @Test
    void a_drill_that_is_there_is_enough() {
        assertEquals(
                List.of(),
                folder(Map.of("a", "needs: [b]\nvariant-of: b", "b", "")).findings("a", RULE));
    }

    @Test
    void a_circle_of_one_is_found() {
        assertEquals(List.of("error 1:9 'a'"), folder(Map.of("a", "needs: [a]")).findings("a", RULE));
    }

    @Test
    void a_circle_of_two_is_found_in_both() {
        Judged folder = folder(Map.of("a", "needs: [b]", "b", "needs: [a]"));
        assertEquals(List.of("error 1:9 'b'"), folder.findings("a", RULE));
        assertEquals(List.of("error 1:9 'a'"), folder.findings("b", RULE));
    }

    @Test
    void a_circle_of_three_is_found_in_all_of_it_and_not_beside_it() {
        Judged folder = folder(Map.of("a", "needs: [b]", "b", "needs: [c]", "c", "needs: [a]", "d", "needs: [a]"));
        assertEquals(List.of("error 1:9 'b'"), folder.findings("a", RULE));
        assertEquals(List.of("error 1:9 'c'"), folder.findings("b", RULE));
        assertEquals(List.of("error 1:9 'a'"), folder.findings("c", RULE));
        assertEquals(List.of(), folder.findings("d", RULE));
    }

    @Test
    void two_ways_to_one_drill_are_no_circle() {
        Judged folder = folder(Map.of("a", "needs: [b, c]", "b", "needs: [d]", "c", "needs: [d]", "d", ""));
        for (String id : List.of("a", "b", "c", "d")) {
            assertEquals(List.of(), folder.findings(id, RULE));
        }
    }

    @Test
    void a_need_is_never_of_a_higher_level() {
        Map<String, String> drills = Map.of(
                "low", "level: beginner\nform: solo",
                "middle", "level: intermediate\nneeds: [low]",
                "wrong", "level: intermediate\nneeds: [high]",
                "high", "level: training\nneeds: [middle]");
        assertEquals(List.of(), folder(drills).findings("middle", RULE));
        assertEquals(List.of(), folder(drills).findings("high", RULE));
        assertEquals(List.of("error 2:9 'high'"), folder(drills).findings("wrong", RULE));
    }
}
