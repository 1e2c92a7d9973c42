package org.drillwright.plan.rounds;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.BitSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Who is left over, counted by hand. Those who are new come first, then those who know the drill. */
class ExtrasTest {

    private static BitSet first(int novices) {
        BitSet bits = new BitSet();
        bits.set(0, novices);
        return bits;
    }

    @ParameterizedTest(name = "{0} new, {1} know it, {2} to help: {3} pairs, {4} help, {5} alone")
    @CsvSource({
        "0,4,1,2,0,0", // all are in pairs: nobody need help
        "0,5,1,2,1,0", // an odd one out
        "0,5,0,2,0,1",
        "0,5,2,2,1,0", // the second has nobody left to help
        "4,1,1,1,1,2", // one pair, one with the helper, two of four alone
        "3,0,2,0,2,1",
        "3,0,1,0,1,2",
        "2,0,3,0,2,0",
        "2,3,1,2,1,0", // five, two of them new: two pairs and the odd one out
        "0,0,1,0,0,0"
    })
    void the_fewest_help_that_leave_the_fewest_alone(
            int fresh, int knowing, int helpers, int pairs, int used, int alone) {
        Problem problem = new Problem(fresh + knowing, helpers, List.of(first(fresh)));
        assertEquals(new Extras(used, 0, 0, alone), Extras.of(problem, 0));
    }

    /** Nobody may work with the helper, so no helper is used. */
    @Test
    void a_helper_kept_apart_from_all_is_of_no_use() {
        Problem problem =
                new Problem(3, 1, List.of(new BitSet())).apart(0, 3).apart(1, 3).apart(2, 3);
        assertEquals(new Extras(0, 0, 0, 1), Extras.of(problem, 0));
    }

    @Test
    void rounds_with_the_same_novices_are_counted_once() {
        Problem problem = new Problem(4, 0, List.of(first(3), new BitSet(), first(3), new BitSet()));
        List<Extras> all = Extras.ofAll(problem);
        assertEquals(
                List.of(new Extras(0, 0, 0, 2), new Extras(0, 0, 0, 0), new Extras(0, 0, 0, 2), new Extras(0, 0, 0, 0)),
                all);
        assertSame(all.get(0), all.get(2));
        assertSame(all.get(1), all.get(3));
    }
}
