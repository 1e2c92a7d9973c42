package org.drillwright.check.form;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.drillwright.check.Judged;
import org.junit.jupiter.api.Test;

class TurnMissingTest {

    private static List<String> found(String lines) {
        return Judged.drill(lines).findings("turn-missing");
    }

    @Test
    void a_side_that_is_silent_is_found_at_the_first_line_of_its_count() {
        assertEquals(List.of("error 4:5 'leader: Retreat.'"), found("""
                        steps:
                          - {leader: Advance., follower: Hold., distance: lunge}
                          -
                            leader: Retreat.
                            distance: lunge
                        """));
    }

    @Test
    void two_silent_sides_are_two_findings() {
        assertEquals(2, found("""
                steps:
                  - distance: lunge
                """).size());
    }

    @Test
    void hold_and_wait_are_something_to_do() {
        assertEquals(List.of(), found("""
                steps:
                  - {leader: Hold., follower: Wait., distance: lunge}
                """));
    }

    @Test
    void a_caller_has_to_say_something_too() {
        assertEquals(List.of("error 3:5 'follower: Advance.'"), found("""
                form: solo
                steps:
                  - follower: Advance.
                    distance: out
                """));
    }

    @Test
    void what_everyone_does_belongs_under_the_follower() {
        assertEquals(
                List.of("In a solo drill the leader only calls: write under 'follower:' what everyone does."),
                Judged.drill("""
                                form: solo
                                steps:
                                  - leader: Advance.
                                    distance: out
                                """).all().stream()
                        .filter(finding -> finding.rule().equals("turn-missing"))
                        .map(finding -> finding.wayOut().english())
                        .toList());
    }

    @Test
    void a_drill_without_counts_is_found() {
        assertEquals(List.of("error 1:1 'steps'"), found("steps: []"));
    }
}
