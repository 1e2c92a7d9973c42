package org.drillwright.plan.pair;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.drillwright.plan.roster.Person;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The federation's orders of bouts name each pair of a pool once. So do as many rounds as an even pool has others; an odd
 * pool takes one round more, in which each has one turn with the instructor.
 */
class PoolOrdersTest {

    /** FIE, Organisation rules o.69 and o.70; US Fencing, Order of Bouts, pools of 4, 5 and 8. */
    @ParameterizedTest(name = "pool of {0}")
    @CsvSource({
        "4, 1-4 2-3 1-3 2-4 3-4 1-2",
        "5, 1-2 3-4 5-1 2-3 5-4 1-3 2-5 4-1 3-5 4-2",
        "6, 1-2 4-3 6-5 3-1 2-6 5-4 1-6 3-5 4-2 5-1 6-4 2-3 1-4 5-2 3-6",
        "6, 1-2 4-5 2-3 5-6 3-1 6-4 2-5 1-4 5-3 1-6 4-2 3-6 5-1 3-4 6-2",
        "7, 1-4 2-5 3-6 7-1 5-4 2-3 6-7 5-1 4-3 6-2 5-7 3-1 4-6 7-2 3-5 1-6 2-4 7-3 6-5 1-2 4-7",
        "8, 2-3 1-5 7-4 6-8 1-2 3-4 5-6 8-7 4-1 5-2 8-3 6-7 4-2 8-1 7-5 3-6 2-8 5-4 6-1 3-7 4-8 2-6 3-5 1-7 4-6 8-5 7-2"
                + " 1-3"
    })
    void a_plan_covers_the_same_pairs(int pool, String order) {
        List<Person> people = new ArrayList<>();
        for (int number = 1; number <= pool; number++) {
            people.add(Person.named("" + number).withKnown(Set.of(Classes.DRILL)));
        }
        int rounds = pool % 2 == 0 ? pool - 1 : pool;
        PairingPlan plan = Classes.of(people).walk().rounds(rounds).plan();
        assertEquals(sorted(Arrays.asList(order.split(" "))), sorted(bouts(plan)));
    }

    private static List<String> bouts(PairingPlan plan) {
        List<String> bouts = new ArrayList<>();
        for (String round : TableChecker.text(plan)) {
            for (String pair : round.split(" ")) {
                if (!pair.contains("instructor")) {
                    bouts.add(pair);
                }
            }
        }
        return bouts;
    }

    private static List<Set<String>> sorted(List<String> bouts) {
        List<Set<String>> pairs = new ArrayList<>();
        bouts.forEach(bout -> pairs.add(new TreeSet<>(Arrays.asList(bout.split("-")))));
        pairs.sort(java.util.Comparator.comparing(Object::toString));
        return Collections.unmodifiableList(pairs);
    }
}
