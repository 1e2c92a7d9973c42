package org.drillwright.check.fencing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.drillwright.check.Judged;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Steps forward and back add up, whole ones and half ones, of a class alone as of two: plain counting. */
class NotBackAtStartTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Take three steps forward. | Take two steps backward. | 1",
                "Take three steps forward. | Take three steps backward. | 0",
                "Advance. | Retreat twice. | 1",
                "Take a half step forward. | Retreat. | 1",
                "Take a half step forward. | Take a half step back. | 0",
                "Lunge. | Recover on guard. | 0",
                "Lunge. | Recover forward on guard. | 1",
                "Wobble forward. | Retreat. | 0",
            })
    void a_class_alone_comes_back_to_where_it_began(String first, String second, int times) {
        String drill = """
                form: solo
                weapon: none
                gear: []
                start: On guard.
                opening: Salute. On guard.
                steps:
                  - leader: Call "One".
                    follower: %s
                    distance: out
                  - leader: Call "Two".
                    follower: %s
                    distance: out
                closing: Salute.
                """.formatted(first, second);
        assertEquals(times, Judged.drill(drill).findings("not-back-at-start").size());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Take a half step forward. | Hold on guard. | Retreat. | Hold on guard. | 1",
                "Take a half step forward. | Hold on guard. | Hold on guard. | Take a half step back. | 0",
                "Take a half step forward. | Hold on guard. | Take a half step back. | Hold on guard. | 0",
                "Advance. | Hold on guard. | Hold on guard. | Hold on guard. | 1",
            })
    void two_come_back_to_their_measure(String leader, String follower, String then, String reply, int times) {
        String drill = """
                steps:
                  - leader: %s
                    follower: %s
                    distance: lunge
                  - leader: %s
                    follower: %s
                    distance: lunge
                """.formatted(leader, follower, then, reply);
        assertEquals(times, Judged.drill(drill).findings("not-back-at-start").size());
    }
}
