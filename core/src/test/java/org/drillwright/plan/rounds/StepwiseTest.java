package org.drillwright.plan.rounds;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Rounds found one by one: exact for one round, and for several where the best table is known beforehand. */
class StepwiseTest {

    private static final CostVector NOTHING = CostVector.of(new long[Objective.COUNT]);

    private static Stepwise stepwise(Problem problem) {
        return new Stepwise(problem, Extras.ofAll(problem), NOTHING);
    }

    @ParameterizedTest
    @MethodSource("org.drillwright.plan.rounds.Four#orders")
    void one_round_is_found_exactly_whatever_it_was_before(String order) {
        Four four = new Four(order, 1).cost(1, Objective.PAST, 1, 1).cost(2, Objective.PAST, 2, 2);
        Stepwise stepwise = stepwise(four.problem());
        assertArrayEquals(four.row(0), Rows.of(stepwise.best(List.of()), 0, 4));
        for (int part = 0; part < 3; part++) {
            assertArrayEquals(
                    four.row(0), Rows.of(stepwise.improved(new PartnerTable(new int[][] {four.row(part)})), 0, 4));
        }
    }

    /** The bound is what the table costs, so it is left as it is. */
    @ParameterizedTest
    @MethodSource("org.drillwright.plan.rounds.Four#orders")
    void a_table_that_reaches_the_bound_stays(String order) {
        Four four = new Four(order, 1);
        for (int part = 0; part < 3; part++) {
            PartnerTable table = new PartnerTable(new int[][] {four.row(part)});
            assertArrayEquals(four.row(part), Rows.of(stepwise(four.problem()).improved(table), 0, 4));
        }
    }

    /**
     * Two fours that don't mix. In one of the two rounds 4 and 6 are new, so 4 works with 5, a gap of 6, and 6 with 7; in the
     * other 4 and 5 are new, so 4 works with 6 and 5 with 7, without gaps. The first four may be paired with gaps 6 + 0, 4 +
     * 2 or 3 + 3, and 0, 1 or 2 meetings of the past. The largest gap is 6 anyway, so the past decides: 0 + 1, although the
     * round of the smaller gaps by itself would be narrower with 2.
     */
    @ParameterizedTest(name = "the wide round is round {0}")
    @CsvSource({"0", "1"})
    void a_gap_that_another_round_has_anyway_costs_nothing(int wide) {
        List<BitSet> novices = new ArrayList<>(List.of(bits(4, 5), bits(4, 5)));
        novices.set(wide, bits(4, 6));
        Problem problem = new Problem(8, 0, novices)
                .cost(Objective.GAP, 0, 1, 6)
                .cost(Objective.GAP, 0, 2, 4)
                .cost(Objective.GAP, 1, 3, 2)
                .cost(Objective.PAST, 0, 2, 1)
                .cost(Objective.GAP, 0, 3, 3)
                .cost(Objective.GAP, 1, 2, 3)
                .cost(Objective.PAST, 0, 3, 1)
                .cost(Objective.PAST, 1, 2, 1)
                .cost(Objective.GAP, 4, 5, 6)
                .apart(4, 7)
                .apart(5, 6);
        for (int one = 0; one < 4; one++) {
            for (int other = 4; other < 8; other++) {
                problem.apart(one, other);
            }
        }
        int[][] rows = new int[2][];
        rows[wide] = new int[] {1, 0, 3, 2, 5, 4, 7, 6};
        rows[1 - wide] = new int[] {3, 2, 1, 0, 6, 7, 4, 5};
        PartnerTable improved = stepwise(problem).improved(new PartnerTable(rows));
        assertEquals(CostVector.of(0, 0, 0, 0, 0, 0, 18, 6, 1, 0, 0), TableCost.tally(problem, improved));
    }

    private static BitSet bits(int... set) {
        BitSet bits = new BitSet();
        IntStream.of(set).forEach(bits::set);
        return bits;
    }

    /** The helper takes whoever had fewest turns, one after the other: 0 for each of three. */
    @Test
    void turns_with_the_helper_go_round() {
        Problem problem = new Problem(3, 1, Collections.nCopies(3, new BitSet()));
        assertEquals(NOTHING, TableCost.tally(problem, stepwise(problem).best(List.of())));
    }

    /** The circle method: 0 stands still, the others go round and face whoever is as far from 0 on the other side. */
    private static int facing(int students, int round, int student) {
        int size = students - 1;
        int place = student == 0 ? size : Math.floorMod(student - 1 + round, size);
        return student > 0 && place == 0 ? 0 : 1 + Math.floorMod(size - place - round, size);
    }

    /** A table that costs nothing is hidden among pairs that cost something; it is the best, and found. */
    private static Problem hidden(int students, int rounds, int decoys, int seed) {
        Random chance = new Random(seed);
        Problem problem = new Problem(students, 0, Collections.nCopies(rounds, new BitSet()));
        for (int one = 0; one < students; one++) {
            for (int other = one + 1; other < students; other++) {
                problem.cost(Objective.PAST, one, other, chance.nextInt(100) < decoys ? 0 : 1 + chance.nextInt(3));
            }
        }
        List<Integer> names =
                new ArrayList<>(IntStream.range(0, students).boxed().toList());
        Collections.shuffle(names, chance);
        for (int round = 0; round < rounds; round++) {
            for (int post = 0; post < students; post++) {
                problem.cost(Objective.PAST, names.get(post), names.get(facing(students, round, post)), 0);
            }
        }
        return problem;
    }

    private static PartnerTable inOrder(int students, int rounds) {
        return new PartnerTable(IntStream.range(0, rounds)
                .mapToObj(round -> IntStream.range(0, students)
                        .map(post -> facing(students, round, post))
                        .toArray())
                .toArray(int[][]::new));
    }

    /** A first beginning often ends above the hidden table; one of several reaches it. */
    @ParameterizedTest(name = "{0} people, {1} rounds, {2} of 100 pairs for nothing besides")
    @CsvSource({"8,4,0", "8,4,10", "10,3,0", "10,4,10", "12,5,10"})
    void of_several_beginnings_one_finds_a_hidden_table(int students, int rounds, int decoys) {
        for (int seed = 1; seed <= 40; seed++) {
            Problem problem = hidden(students, rounds, decoys, seed);
            assertEquals(NOTHING, TableCost.tally(problem, stepwise(problem).best(List.of())), "class " + seed);
        }
    }

    /** These classes get from the ring, taken in the roster's order, to the hidden table by finding rounds anew. */
    @ParameterizedTest(name = "{0} people, {1} rounds, {2} of 100 pairs for nothing besides")
    @CsvSource({
        "8,3,20,1 2 3 4 5 6 7 8 9 11 13 14 15 16 19 20 26 28 29 30 32 33 34 36 37 38",
        "10,3,20,1 5 6 7 8 9 11 12 14 17 18 19 20 21 22 23 26 27 28 29 30 31 32 33 34 35 37 38 39 40",
        "10,4,20,3 5 7 8 9 10 11 12 14 15 17 18 19 21 22 23 25 26 28 29 31 33 34 35 38 39",
        "16,9,15,1 2 5 6 8 10 11 17 18",
        "20,6,5,7 14 15 16 20",
        "20,10,5,2 12 13 16",
        "12,6,20,1 2 4 5 6 7 8 12 13 14 16 17 18 19 21 23 24 26 28 29 32 33 34 35 36 37 38 39 40"
    })
    void rounds_found_anew_lead_to_a_hidden_table(int students, int rounds, int decoys, String seeds) {
        for (String seed : seeds.split(" ", -1)) {
            Problem problem = hidden(students, rounds, decoys, Integer.parseInt(seed));
            PartnerTable improved = stepwise(problem).improved(inOrder(students, rounds));
            assertEquals(NOTHING, TableCost.tally(problem, improved), "class " + seed);
        }
    }
}
