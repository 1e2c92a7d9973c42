package org.drillwright.plan.pair;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.drillwright.plan.roster.Person;
import org.drillwright.plan.rounds.Objective;
import org.drillwright.register.Entry;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Small classes against a search through all tables, written here and nowhere else. */
class BruteForceTest {

    /** The smallest cost of any table: repeats first, then the sum of the pairs' costs, then the largest of them. */
    private static final class Search {

        private final int people;
        private final int rounds;
        private final int[][] cost;
        private final boolean[][] permitted;
        private final boolean largestCounts;
        private final List<int[]> matchings = new ArrayList<>();
        private final int[][] met;
        private int[] best = {Integer.MAX_VALUE, 0, 0};

        Search(int people, int rounds, int[][] cost, boolean[][] permitted, boolean largestCounts) {
            this.people = people;
            this.rounds = rounds;
            this.cost = cost;
            this.permitted = permitted;
            this.largestCounts = largestCounts;
            this.met = new int[people][people];
            matchings(new int[people], 0);
        }

        private void matchings(int[] mates, int taken) {
            if (taken == (1 << people) - 1) {
                matchings.add(mates.clone());
                return;
            }
            int one = Integer.numberOfTrailingZeros(~taken);
            for (int other = one + 1; other < people; other++) {
                if ((taken >> other & 1) == 0 && permitted[one][other]) {
                    mates[one] = other;
                    mates[other] = one;
                    matchings(mates, taken | 1 << one | 1 << other);
                }
            }
        }

        /** The order of rounds doesn't matter, so each set of rounds is looked at once. */
        int[] least() {
            go(0, 0, new int[] {0, 0, 0});
            return best;
        }

        private void go(int round, int from, int[] sum) {
            if (Arrays.compare(sum, best) >= 0) {
                return;
            }
            if (round == rounds) {
                best = sum;
                return;
            }
            for (int at = from; at < matchings.size(); at++) {
                int[] mates = matchings.get(at);
                int[] next = sum.clone();
                for (int one = 0; one < people; one++) {
                    if (mates[one] > one) {
                        next[0] += met[one][mates[one]];
                        next[1] += cost[one][mates[one]];
                        next[2] = largestCounts ? Math.max(next[2], cost[one][mates[one]]) : 0;
                    }
                }
                change(mates, 1);
                go(round + 1, at, next);
                change(mates, -1);
            }
        }

        private void change(int[] mates, int by) {
            for (int one = 0; one < people; one++) {
                met[one][mates[one]] += mates[one] > one ? by : 0;
            }
        }
    }

    @ParameterizedTest(name = "{0} new of {1}, {2} rounds, case {3}")
    @CsvSource({
        "0,8,5,1",
        "1,8,5,2",
        "2,8,5,3",
        "3,8,5,4",
        "3,8,5,5",
        "4,8,5,6",
        "4,8,4,7",
        "2,8,5,8",
        "0,10,3,9",
        "3,10,3,10",
        "5,10,3,11",
        "4,10,3,12",
        "2,6,5,13",
        "3,6,5,14"
    })
    void a_learning_class_costs_as_little_as_any_table(int fresh, int people, int rounds, int seed) {
        Random chance = new Random(seed);
        int[][] past = new int[people][people];
        Classes classes = Classes.of(fresh, people - fresh).rounds(rounds);
        for (int pair = 0; pair < 2 * people; pair++) {
            int one = chance.nextInt(people);
            int other = chance.nextInt(people);
            if (one < other && past[one][other] == 0) {
                past[one][other] = 1;
                classes.past(Entry.workedWith(
                        LocalDate.of(2026, 9, 7), name(one, fresh), Classes.DRILL, name(other, fresh)));
            }
        }
        boolean[][] permitted = new boolean[people][people];
        for (int one = 0; one < people; one++) {
            for (int other = 0; other < people; other++) {
                permitted[one][other] = one >= fresh || other >= fresh;
            }
        }
        int[] least = new Search(people, rounds, past, permitted, false).least();
        PairingPlan plan = classes.plan();
        TableChecker checker =
                new TableChecker(names(fresh, people), names(fresh, fresh)).rounds(TableChecker.text(plan));
        int met = 0;
        for (int one = 0; one < people; one++) {
            for (int other = one + 1; other < people; other++) {
                met += past[one][other] * checker.met(name(one, fresh), name(other, fresh));
            }
        }
        assertEquals(List.of(), checker.faults());
        assertEquals(List.of(least[0], least[1]), List.of(checker.repeats(), met), plan::toString);
        assertTrue(
                plan.verdict().orElseThrow().bound().of(Objective.REPEATS) <= least[0], "the bound is above the best");
        assertTrue(
                plan.verdict().orElseThrow().bound().of(Objective.REPEATS) < least[0]
                        || plan.verdict().orElseThrow().bound().of(Objective.PAST) <= 4L * least[1],
                "the bound is above the best");
    }

    private static String name(int at, int fresh) {
        return at < fresh ? "A" + at : "B" + (at - fresh);
    }

    private static Set<String> names(int fresh, int upTo) {
        Set<String> names = new java.util.TreeSet<>();
        for (int at = 0; at < upTo; at++) {
            names.add(name(at, fresh));
        }
        return names;
    }

    @ParameterizedTest(name = "{0} people, {1} rounds, case {2}")
    @CsvSource({"8,5,1", "8,5,2", "8,5,3", "8,5,4", "8,3,5", "10,3,6", "10,3,7", "10,3,8", "10,3,9", "6,5,10"})
    void a_training_class_has_the_smallest_squares_of_gaps(int people, int rounds, int seed) {
        Random chance = new Random(seed);
        List<Person> trained = new ArrayList<>();
        int[] skill = new int[people];
        for (int at = 0; at < people; at++) {
            skill[at] = chance.nextInt(20);
            trained.add(Person.named("A" + at).withSkill(skill[at]));
        }
        int[][] gap = new int[people][people];
        boolean[][] permitted = new boolean[people][people];
        for (int one = 0; one < people; one++) {
            for (int other = 0; other < people; other++) {
                gap[one][other] = (skill[one] - skill[other]) * (skill[one] - skill[other]);
                permitted[one][other] = true;
            }
        }
        int[] least = new Search(people, rounds, gap, permitted, true).least();
        PairingPlan plan = Classes.of(trained).training().rounds(rounds).plan();
        TableChecker checker = new TableChecker(names(people, people), Set.of()).rounds(TableChecker.text(plan));
        int sum = 0;
        int largest = 0;
        for (int one = 0; one < people; one++) {
            for (int other = one + 1; other < people; other++) {
                int met = checker.met("A" + one, "A" + other);
                sum += met * gap[one][other];
                largest = met > 0 ? Math.max(largest, gap[one][other]) : largest;
            }
        }
        assertEquals(List.of(), checker.faults());
        assertEquals(List.of(least[0], least[1], least[2]), List.of(checker.repeats(), sum, largest), plan::toString);
        assertTrue(
                plan.verdict()
                                .orElseThrow()
                                .cost()
                                .compareTo(plan.verdict().orElseThrow().bound())
                        >= 0,
                "the bound is above the plan");
    }
}
