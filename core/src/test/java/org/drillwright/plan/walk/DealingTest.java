package org.drillwright.plan.walk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.drillwright.plan.roster.BothNew;
import org.drillwright.plan.rounds.Extras;
import org.drillwright.plan.rounds.Problem;
import org.junit.jupiter.api.Test;

/**
 * Whether one forming serves several drills. Worked by hand with Ash 0, Bo 1, Cy 2, Dee 3, Eli 4, Fay 5, Gus 6 and Hal 7, all
 * invented: drill P is new to Gus and Hal, drill Q to Fay, Gus and Hal.
 */
class DealingTest {

    private static final int ELI = 4;
    private static final int FAY = 5;

    private static BitSet bits(int... members) {
        BitSet bits = new BitSet();
        IntStream.of(members).forEach(bits::set);
        return bits;
    }

    private static Problem evening(int helpers, BitSet newToQ) {
        BitSet newToP = bits(6, 7);
        return new Problem(8, helpers, List.of(newToP, newToP, newToQ, newToQ));
    }

    private static Dealing dealing(Problem problem) {
        return new Dealing(problem, Extras.ofAll(problem), 0, problem.rounds());
    }

    private static Set<Integer> set(List<Integer> line) {
        return new TreeSet<>(line);
    }

    /** Eli and Fay are apart, so Eli joins those who are new: four of eight. */
    @Test
    void who_is_new_and_who_is_apart_stand_in_one_line() {
        LinePosts lines = dealing(evening(0, bits(FAY, 6, 7)).apart(ELI, FAY))
                .lines(new BitSet())
                .orElseThrow();
        assertEquals(Set.of(ELI, FAY, 6, 7), set(lines.stays()));
        assertEquals(Set.of(0, 1, 2, 3), set(lines.moves()));
    }

    /** Ash and Bo are new to Q too, nobody is apart: five of eight in one line; Cy, Dee, Eli and two who help fill the other. */
    @Test
    void helpers_fill_the_second_line() {
        LinePosts lines =
                dealing(evening(2, bits(0, 1, FAY, 6, 7))).lines(new BitSet()).orElseThrow();
        assertEquals(Set.of(0, 1, FAY, 6, 7), set(lines.stays()));
        assertEquals(Set.of(2, 3, ELI, 8, 9), set(lines.moves()));
    }

    /** With Eli and Fay apart as well six stand against two and two who help. */
    @Test
    void six_against_two_and_two_who_help_make_no_lines() {
        Dealing dealing = dealing(evening(2, bits(0, 1, FAY, 6, 7)).apart(ELI, FAY));
        assertEquals(Optional.empty(), dealing.lines(new BitSet()));
        Obstacle obstacle = dealing.obstacle();
        assertEquals(Obstacle.Why.ONE_LINE, obstacle.why());
        assertEquals(List.of(0, 1, ELI, FAY, 6, 7), obstacle.together());
        assertEquals(2, obstacle.helpers());
    }

    /** Three who are apart, three times: no three of nine who are joined so fill a line of four or five, nor half of ten. */
    @Test
    void parts_that_do_not_add_up_are_told() {
        Problem problem = new Problem(6, 0, List.of(new BitSet(), new BitSet()));
        for (int one = 0; one < 6; one += 2) {
            problem.apart(one, one + 1);
        }
        Dealing dealing = dealing(problem);
        assertEquals(Optional.empty(), dealing.lines(new BitSet()));
        assertEquals(Obstacle.Why.UNEVEN, dealing.obstacle().why());
    }

    /** Small random classes: two lines are found just where one of all ways to deal everybody out serves. */
    @Test
    void lines_are_found_where_there_are_any() {
        Random random = new Random(1);
        int found = 0;
        for (int run = 0; run < 1_500; run++) {
            Problem problem = RandomEvenings.of(random, 2 + random.nextInt(7), 2);
            List<Extras> least = Extras.ofAll(problem);
            Optional<LinePosts> lines = new Dealing(problem, least, 0, problem.rounds()).lines(new BitSet());
            assertEquals(EveryDealing.serves(problem, least, 0, problem.rounds()), lines.isPresent(), "run " + run);
            lines.ifPresent(served -> assertTrue(EveryDealing.isSound(problem, served)));
            found += lines.isPresent() ? 1 : 0;
        }
        assertTrue(found > 300 && found < 1_200, "both must come up: " + found);
    }

    /** Who watches can't walk: of two who help one has to watch four pairs, so five and three can't be evened out. */
    @Test
    void whoever_watches_stands_in_no_line() {
        BitSet all = new BitSet();
        all.set(0, 8);
        Problem problem = new Problem(8, 2, List.of(bits(0, 1, 2, 3, 4), all)).ways(true, BothNew.NEEDED, 12);
        assertTrue(dealing(problem).lines(new BitSet()).isEmpty());
        Problem without = new Problem(8, 2, List.of(bits(0, 1, 2, 3, 4))).ways(true, BothNew.NEEDED, 12);
        List<Integer> moving = new ArrayList<>(
                dealing(without).lines(new BitSet()).orElseThrow().moves());
        moving.removeIf(vertex -> vertex < 8);
        assertEquals(2, moving.size());
    }
}
