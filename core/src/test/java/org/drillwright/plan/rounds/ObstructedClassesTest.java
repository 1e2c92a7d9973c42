package org.drillwright.plan.rounds;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.drillwright.plan.roster.BothNew;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Classes in which something is in the way, made so that a theorem says what can be had. The theorems are textbook knowledge
 * (Lovász and Plummer, Matching Theory, 1986), cited from memory with their first sources.
 */
class ObstructedClassesTest {

    /** A class of which only those named may meet; nobody joins a pair. */
    private static Problem meeting(int students, int helpers, int rounds, List<int[]> pairs) {
        Problem problem = new Problem(students, helpers, Collections.nCopies(rounds, new BitSet()));
        boolean[][] may = new boolean[students][students];
        pairs.forEach(pair -> {
            may[pair[0]][pair[1]] = true;
            may[pair[1]][pair[0]] = true;
        });
        for (int one = 0; one < students; one++) {
            for (int other = one + 1; other < students; other++) {
                if (!may[one][other]) {
                    problem.apart(one, other);
                }
            }
        }
        return problem;
    }

    /** Everybody of some with everybody else of them. */
    private static List<int[]> all(int from, int to) {
        List<int[]> pairs = new ArrayList<>();
        for (int one = from; one < to; one++) {
            for (int other = one + 1; other < to; other++) {
                pairs.add(new int[] {one, other});
            }
        }
        return pairs;
    }

    private static void add(List<int[]> pairs, int... ends) {
        for (int at = 0; at < ends.length; at += 2) {
            pairs.add(new int[] {ends[at], ends[at + 1]});
        }
    }

    /** Five in a ring, five in a star, each of the one with one of the other. */
    private static List<int[]> petersen() {
        List<int[]> pairs = new ArrayList<>();
        for (int at = 0; at < 5; at++) {
            add(pairs, at, (at + 1) % 5, at, 5 + at, 5 + at, 5 + (at + 2) % 5);
        }
        return pairs;
    }

    /**
     * Everybody has three partners, but no three rounds, and not even two, are without a repeat (Petersen 1898: the graph
     * has no colouring of its edges by three). It has six perfect matchings, any two of which share just one pair, and each
     * pair is in two of them. So r of the six, all different, repeat r (r - 1) / 2 pairs up to six rounds; one of them twice
     * would repeat five.
     */
    @ParameterizedTest
    @CsvSource({"1, 0", "2, 1", "3, 3", "4, 6", "6, 15"})
    void petersens_graph_has_no_two_rounds_without_a_repeat(int rounds, int repeats) {
        Solution solution = Solver.solve(meeting(10, 0, rounds, petersen()));
        assertEquals(repeats, solution.cost().of(Objective.REPEATS));
        assertEquals(solution.cost(), solution.bound());
    }

    /** Whatever the two of each pair cost, any two rounds share a pair; by whatever numbers people have. */
    @Test
    void petersens_graph_under_other_numbers_costs_the_same() {
        Random chance = new Random(1898);
        Problem problem = meeting(10, 0, 2, petersen());
        petersen().forEach(pair -> problem.cost(Objective.PAST, pair[0], pair[1], chance.nextInt(5)));
        Solution first = Solver.solve(problem);
        assertEquals(1, first.cost().of(Objective.REPEATS));
        for (int time = 0; time < 30; time++) {
            Solution other = Solver.solve(SmallClass.relabelled(problem, turned(problem, chance)));
            assertEquals(first.cost(), other.cost());
            assertEquals(first.bound(), other.bound());
        }
    }

    private static int[] turned(Problem problem, Random chance) {
        List<Integer> order =
                new ArrayList<>(IntStream.range(0, problem.students()).boxed().toList());
        Collections.shuffle(order, chance);
        return IntStream.range(0, problem.blank())
                .map(vertex -> problem.isStudent(vertex) ? order.get(vertex) : vertex)
                .toArray();
    }

    /** What is proved best is so by whatever numbers people have; what isn't never costs less than another's bound. */
    @Test
    void a_relabelled_class_costs_the_same() {
        Random chance = new Random(12);
        for (int one = 0; one < 300; one++) {
            Problem problem = SmallClass.drawn(chance);
            Solution first = Solver.solve(problem);
            Solution other = Solver.solve(SmallClass.relabelled(problem, turned(problem, chance)));
            String said = "class " + one + ": " + first.cost() + " " + other.cost();
            assertEquals(first.extras(), other.extras(), said);
            assertTrue(first.bound().compareTo(other.cost()) <= 0, said);
            assertTrue(other.bound().compareTo(first.cost()) <= 0, said);
            boolean proved = first.cost().equals(first.bound()) && other.cost().equals(other.bound());
            assertTrue(!proved || first.cost().equals(other.cost()), said);
        }
    }

    /** Fewer tables are left when two more are kept apart, and more when one more helps. */
    @Test
    void one_more_apart_never_helps_and_one_more_helper_never_leaves_more_alone() {
        Random chance = new Random(21);
        for (int one = 0; one < 300; one++) {
            long seed = chance.nextLong();
            Problem problem = SmallClass.drawn(new Random(seed));
            Solution before = Solver.solve(problem);
            Problem stricter = SmallClass.drawn(new Random(seed)).apart(0, 1);
            Solution after = Solver.solve(stricter);
            if (before.extras().equals(after.extras())) {
                assertTrue(before.bound().compareTo(after.cost()) <= 0, "class " + one);
            }
            int alone = alone(problem);
            assertTrue(alone <= alone(stricter), "class " + one);
            // Where nobody helps, nobody need have an eye on two who are new.
            if (problem.helpers() > 0 || problem.bothNew() != BothNew.WANTED) {
                assertTrue(alone >= alone(helpedByOneMore(problem)), "class " + one);
            }
        }
    }

    private static int alone(Problem problem) {
        return Extras.ofAll(problem).stream().mapToInt(Extras::blanks).sum();
    }

    private static Problem helpedByOneMore(Problem problem) {
        List<BitSet> novices =
                IntStream.range(0, problem.rounds()).mapToObj(problem::novices).toList();
        Problem more = new Problem(problem.students(), problem.helpers() + 1, novices)
                .ways(problem.threes(), problem.bothNew(), problem.eyes());
        for (int one = 0; one < problem.students(); one++) {
            for (int other = one + 1; other < problem.blank(); other++) {
                if (problem.areApart(one, other)) {
                    more.apart(one, other);
                }
            }
        }
        return more;
    }

    /**
     * New ones who may only meet some who know it, d fewer than they are, and an even number of others among each other: d
     * are left over (Hall 1935; Ore 1955 by how many), of whom each helper takes one.
     */
    @ParameterizedTest(name = "{0} new may meet {1}, {2} others, {3} helpers")
    @CsvSource({"2,1,0,0", "3,2,4,0", "3,2,4,1", "5,2,6,1", "6,2,2,3", "8,7,8,0", "8,5,10,2", "4,4,4,1"})
    void new_ones_with_too_few_partners_are_left_over(int fresh, int knowing, int others, int helpers) {
        List<int[]> pairs = all(fresh + knowing, fresh + knowing + others);
        for (int one = 0; one < fresh; one++) {
            for (int other = fresh; other < fresh + knowing; other++) {
                add(pairs, one, other);
            }
        }
        Problem problem = meeting(fresh + knowing + others, helpers, 2, pairs);
        int left = fresh - knowing;
        Solution solution = Solver.solve(problem);
        int helped = Math.min(left, helpers);
        assertEquals(Collections.nCopies(2, new Extras(helped, 0, 0, left - helped)), solution.extras());
    }

    /**
     * So many people whom all may meet, and two more groups of an odd number, each of which keeps to itself: without the
     * former each group leaves one over, and they can take all of these but two (Tutte 1947; Berge 1958 by how many).
     */
    @ParameterizedTest(name = "{0} whom all may meet, groups of {1}")
    @CsvSource({"0,1", "0,3", "0,5", "1,1", "1,3", "2,1", "2,3", "3,1", "3,5"})
    void odd_groups_leave_two_over(int centre, int size) {
        int groups = centre + 2;
        int students = centre + groups * size;
        List<int[]> pairs = all(0, centre);
        for (int group = 0; group < groups; group++) {
            int from = centre + group * size;
            pairs.addAll(all(from, from + size));
            for (int one = 0; one < centre; one++) {
                for (int other = from; other < from + size; other++) {
                    add(pairs, one, other);
                }
            }
        }
        Solution solution = Solver.solve(meeting(students, 0, 1, pairs));
        assertEquals(List.of(new Extras(0, 0, 0, 2)), solution.extras());
        Solution helped = Solver.solve(meeting(students, 1, 1, pairs));
        assertEquals(List.of(new Extras(1, 0, 0, 1)), helped.extras());
    }

    /**
     * Sixteen of whom each may meet three, one of them with one of each of three groups of five: three odd groups without
     * that one, so two are left over. Three partners each are enough only where no single meeting holds all together
     * (Petersen 1891).
     */
    @Test
    void three_partners_each_are_not_enough() {
        List<int[]> pairs = new ArrayList<>();
        for (int from = 1; from < 16; from += 5) {
            add(pairs, 0, from, from, from + 1, from, from + 2);
            add(pairs, from + 1, from + 3, from + 1, from + 4, from + 2, from + 3, from + 2, from + 4);
            add(pairs, from + 3, from + 4);
        }
        assertEquals(3 * 16 / 2, pairs.size());
        assertEquals(
                List.of(new Extras(0, 0, 0, 2)),
                Solver.solve(meeting(16, 0, 1, pairs)).extras());
    }

    /** As many new as know it, each of whom may meet r of the others: r rounds without a repeat (König 1916), and no more. */
    @ParameterizedTest(name = "{0} and {0}, {1} partners each")
    @CsvSource({"3,2", "4,3", "5,2", "7,4", "9,5", "12,6"})
    void two_halves_with_as_many_partners_each_split_into_rounds(int half, int partners) {
        List<int[]> pairs = new ArrayList<>();
        for (int one = 0; one < half; one++) {
            for (int step = 0; step < partners; step++) {
                add(pairs, one, half + (one + step * step + step) % half);
            }
        }
        // Steps that come to the same person count once.
        int each = (int) IntStream.range(0, partners)
                .map(step -> (step * step + step) % half)
                .distinct()
                .count();
        Solution solution = Solver.solve(meeting(2 * half, 0, each, pairs));
        assertEquals(0, solution.cost().of(Objective.REPEATS));
        Solution more = Solver.solve(meeting(2 * half, 0, each + 1, pairs));
        assertEquals(half, more.cost().of(Objective.REPEATS));
        assertEquals(more.cost(), more.bound());
    }

    /** All may meet: n - 1 rounds without a repeat (Kirkman 1847), and in the n-th all meet again. */
    @ParameterizedTest
    @ValueSource(ints = {2, 4, 6, 8, 10, 12, 16})
    void where_all_may_meet_all_do_before_anybody_repeats(int people) {
        assertEquals(
                0,
                Solver.solve(meeting(people, 0, people - 1, all(0, people)))
                        .cost()
                        .of(Objective.REPEATS));
        Solution more = Solver.solve(meeting(people, 0, people, all(0, people)));
        assertEquals(people / 2, more.cost().of(Objective.REPEATS));
        assertEquals(more.cost(), more.bound());
    }

    /**
     * Whoever has n / 2 + r - 1 partners left at least: r rounds without a repeat, as after each round there is a ring through
     * all (Dirac 1952), and every second pair of it is a round.
     */
    @Test
    void enough_partners_each_are_enough_rounds() {
        Random chance = new Random(1952);
        for (int time = 0; time < 60; time++) {
            int people = 6 + 2 * chance.nextInt(5);
            int rounds = 1 + chance.nextInt(3);
            Problem problem = new Problem(people, 0, Collections.nCopies(rounds, new BitSet()));
            int[] left = new int[people];
            Arrays.fill(left, people - 1);
            for (int tries = 0; tries < people * people; tries++) {
                int one = chance.nextInt(people);
                int other = chance.nextInt(people);
                int least = people / 2 + rounds - 1;
                if (one != other && !problem.areApart(one, other) && left[one] > least && left[other] > least) {
                    problem.apart(one, other);
                    left[one]--;
                    left[other]--;
                }
            }
            assertEquals(
                    0, Solver.solve(problem).cost().of(Objective.REPEATS), people + " people, " + rounds + " rounds");
        }
    }

    /** Of three who are apart of each other and all new one may meet the one who knows it; the others are alone, never a three. */
    @Test
    void a_three_never_joins_two_who_are_apart() {
        BitSet fresh = new BitSet();
        fresh.set(0, 3);
        Problem problem = new Problem(4, 0, List.of(fresh))
                .ways(/* thirds= */ true, BothNew.NEVER, 1)
                .apart(0, 1)
                .apart(0, 2)
                .apart(1, 2);
        assertEquals(List.of(new Extras(0, 0, 0, 2)), Solver.solve(problem).extras());
    }

    /**
     * Knowers and helpers serve two more each at most, and one each: k new are all served just if k <= 2 m + a, each one more
     * is alone (by counting).
     */
    @ParameterizedTest(name = "{0} know it, {1} help")
    @CsvSource({"1,0", "2,1", "3,1", "3,2", "5,1"})
    void as_many_new_as_can_be_served(int knowing, int helpers) {
        for (int more = 0; more < 3; more++) {
            int fresh = 2 * knowing + helpers + more;
            BitSet novices = new BitSet();
            novices.set(0, fresh);
            Problem problem = new Problem(fresh + knowing, helpers, List.of(novices)).ways(true, BothNew.NEVER, 1);
            assertEquals(
                    List.of(new Extras(helpers, knowing, 0, more)),
                    Solver.solve(problem).extras());
        }
    }
}
