package org.drillwright.plan.rounds;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Movements of few people, drawn on paper: who faces whom, post by post, and where. */
class FormationTest {

    private static String facing(Formation formation, int round) {
        return IntStream.range(0, formation.posts())
                .mapToObj(post -> Integer.toString(formation.facing(round, post)))
                .collect(Collectors.joining(" "));
    }

    private static String places(Formation formation, int round) {
        return IntStream.range(0, formation.posts())
                .mapToObj(post -> Integer.toString(formation.place(round, post)))
                .collect(Collectors.joining(" "));
    }

    /** 0, 1 and 2 stand; 3, 4 and 5 step one place down, and the one at place 0 walks to place 2. */
    @ParameterizedTest(name = "round {0}")
    @CsvSource({"0,3 4 5 0 1 2,0 1 2 0 1 2", "1,4 5 3 2 0 1,0 1 2 2 0 1", "2,5 3 4 1 2 0,0 1 2 1 2 0"})
    void in_two_lines_of_three_the_second_line_steps(int round, String facing, String places) {
        Formation lines = new TwoLines(3);
        assertEquals(facing, facing(lines, round));
        assertEquals(places, places(lines, round));
    }

    /** 0, 1 and 2 are new. 3 begins at place 0, 4 at place 1, the gap, 5, at place 2; they step one place up. */
    @ParameterizedTest(name = "round {0}")
    @CsvSource({"0,3 4 5 0 1 2,0 1 2 0 1 2", "1,5 3 4 1 2 0,0 1 2 1 2 0", "2,4 5 3 2 0 1,0 1 2 2 0 1"})
    void on_a_ring_of_three_two_walkers_and_a_gap_go_round(int round, String facing, String places) {
        Formation ring = new BlankRing(3, 2);
        assertEquals(facing, facing(ring, round));
        assertEquals(places, places(ring, round));
    }

    /** Five places for two: the walkers, 5 and 6, begin at 0 and 2, half of five; the gaps are 7, 8 and 9. */
    @Test
    void gaps_are_spread_between_the_walkers() {
        assertEquals("5 7 6 8 9 0 2 1 3 4", facing(new BlankRing(5, 2), 0));
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
    void each_movement_has_its_posts_for_those_who_are_new() {
        List<Formation> all = List.of(new TwoLines(3), new Ring(2, 4), new BlankRing(3, 2));
        assertEquals(List.of(3, 2, 3), all.stream().map(Formation::novicePosts).toList());
        assertEquals(List.of(6, 6, 6), all.stream().map(Formation::posts).toList());
        assertEquals(
                List.of(Method.TWO_LINES, Method.RING, Method.BLANK_RING),
                all.stream().map(Formation::method).toList());
    }
}
