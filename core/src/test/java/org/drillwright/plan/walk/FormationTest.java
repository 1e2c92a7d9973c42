package org.drillwright.plan.walk;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.drillwright.plan.rounds.Method;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Movements of few people, drawn on paper: who faces whom, post by post, and where. */
class FormationTest {

    private static String facing(Formation formation, int round) {
        return IntStream.range(0, formation.spots())
                .mapToObj(post -> Integer.toString(formation.facing(round, post)))
                .collect(Collectors.joining(" "));
    }

    private static String places(Formation formation, int round) {
        return IntStream.range(0, formation.spots())
                .mapToObj(post -> Integer.toString(formation.post(round, post)))
                .collect(Collectors.joining(" "));
    }

    /** 0, 1 and 2 stay; 3, 4 and 5 move one post up, and the one at the last post walks round to the first. */
    @ParameterizedTest(name = "round {0}")
    @CsvSource({"0,3 4 5 0 1 2,0 1 2 0 1 2", "1,5 3 4 1 2 0,0 1 2 1 2 0", "2,4 5 3 2 0 1,0 1 2 2 0 1"})
    void in_two_lines_of_three_the_second_line_moves(int round, String facing, String places) {
        Formation lines = new TwoLines(3);
        assertEquals(facing, facing(lines, round));
        assertEquals(places, places(lines, round));
    }

    /**
     * Ring of four places, 0 and 1 facing each other, the two who are new, 0 and 1, at 2 and 3. The walkers 2 to 5 begin at
     * places 0 to 3 and step one place up.
     */
    @ParameterizedTest(name = "round {0}")
    @CsvSource({"0,4 5 3 2 0 1,1 2 0 0 1 2", "1,3 4 5 0 1 2,1 2 0 1 2 0", "2,2 3 0 1 5 4,1 2 1 2 0 0"})
    void on_a_ring_of_four_two_walkers_face_each_other(int round, String facing, String places) {
        Formation ring = new Ring(2, 4);
        assertEquals(facing, facing(ring, round));
        assertEquals(places, places(ring, round));
    }

    /** Ring of three places: 1 and 2 face each other, the one who is new stands at place 0. */
    @ParameterizedTest(name = "round {0}")
    @CsvSource({"0,1 0 3 2,0 0 1 1", "1,3 2 1 0,0 1 1 0", "2,2 3 0 1,0 1 0 1"})
    void on_a_ring_of_three_one_stands(int round, String facing, String places) {
        Formation ring = new Ring(1, 3);
        assertEquals(facing, facing(ring, round));
        assertEquals(places, places(ring, round));
    }

    @Test
    void each_movement_has_its_spots_for_those_who_stand_still() {
        List<Formation> all = List.of(new TwoLines(3), new Ring(2, 4));
        assertEquals(List.of(3, 2), all.stream().map(Formation::still).toList());
        assertEquals(List.of(6, 6), all.stream().map(Formation::spots).toList());
        assertEquals(
                List.of(Method.TWO_LINES, Method.RING),
                all.stream().map(Formation::method).toList());
    }
}
