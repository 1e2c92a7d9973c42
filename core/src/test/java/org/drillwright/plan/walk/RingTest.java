package org.drillwright.plan.walk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a ring promises, checked for every small one: distances round the ring that all differ. */
class RingTest {

    @ParameterizedTest(name = "a ring of {0}")
    @CsvSource({"1", "2", "3", "4", "5", "6", "7", "8", "9", "10", "11", "12", "13", "14", "16", "17"})
    void in_as_many_rounds_as_places_no_pair_meets_twice_and_no_two_who_stand_meet(int size) {
        for (int standing = size % 2 == 0 ? 2 : 1; standing <= size; standing += 2) {
            Ring ring = new Ring(standing, size);
            Set<Set<Integer>> met = new HashSet<>();
            for (int round = 0; round < size; round++) {
                Set<Integer> places = new HashSet<>();
                for (int post = 0; post < standing + size; post++) {
                    int facing = ring.facing(round, post);
                    assertEquals(post, ring.facing(round, facing));
                    assertEquals(ring.post(round, post), ring.post(round, facing));
                    assertTrue(post >= standing || facing >= standing, "two who stand");
                    assertTrue(post > facing || met.add(Set.of(post, facing)), "a pair twice");
                    places.add(ring.post(round, post));
                }
                assertEquals((standing + size) / 2, places.size());
            }
            assertEquals(size * (standing + size) / 2, met.size());
        }
    }

    /** Of six places 0 and 1 face each other, and 2 and 4, two apart; those who stand are at 3 and 5. */
    @Test
    void on_a_ring_of_six_two_pairs_have_distances_of_one_and_two() {
        Ring ring = new Ring(2, 6);
        assertEquals(
                List.of(5, 7, 3, 2, 6, 0, 4, 1),
                List.of(
                        ring.facing(0, 0),
                        ring.facing(0, 1),
                        ring.facing(0, 2),
                        ring.facing(0, 3),
                        ring.facing(0, 4),
                        ring.facing(0, 5),
                        ring.facing(0, 6),
                        ring.facing(0, 7)));
    }
}
