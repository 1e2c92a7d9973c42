package org.drillwright.plan.rounds;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.BitSet;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which movement serves which class, by the lengths of lines and rings. */
class FormationsTest {

    private static BitSet first(int novices) {
        BitSet bits = new BitSet();
        bits.set(0, novices);
        return bits;
    }

    private static String chosen(Problem problem) {
        return Formations.of(problem, Extras.ofAll(problem))
                .map(formation -> formation.method() + " of " + formation.posts())
                .orElse("none");
    }

    @ParameterizedTest(name = "{0} new, {1} know it, {2} help, {3} rounds: {4}")
    @CsvSource({
        "0,6,0,3,TWO_LINES of 6",
        "0,6,0,4,RING of 6",
        "0,6,0,5,RING of 6",
        "0,6,0,6,none", // each has but five others
        "2,4,0,3,TWO_LINES of 6",
        "2,4,0,4,RING of 6", // the ring has four places
        "2,4,0,5,none",
        "2,2,0,2,TWO_LINES of 4", // as many know it as don't: nobody is left
        "2,2,0,3,none",
        "0,5,1,3,TWO_LINES of 6", // the helper makes up the sixth
        "0,5,0,3,none",
        "3,2,0,3,BLANK_RING of 6",
        "3,2,0,4,none", // three places
        "3,0,0,1,none", // nobody walks
        "3,0,1,1,BLANK_RING of 6",
        "0,0,0,1,none",
        "0,4,0,0,none"
    })
    void the_simplest_that_lasts_all_rounds(int fresh, int knowing, int helpers, int rounds, String movement) {
        assertEquals(
                movement, chosen(new Problem(fresh + knowing, helpers, Collections.nCopies(rounds, first(fresh)))));
    }

    /** Of six, 0 is new to one drill and 1 to the other: both fit into one line. */
    @Test
    void several_drills_are_served_if_all_who_are_new_to_one_stand() {
        BitSet other = new BitSet();
        other.set(1);
        assertEquals("TWO_LINES of 6", chosen(new Problem(6, 0, List.of(first(1), other))));
    }

    /** In the first round nobody is left over, in the second two are. */
    @Test
    void rounds_that_leave_over_differently_are_not_walked() {
        assertEquals("none", chosen(new Problem(4, 0, List.of(first(0), first(3)))));
    }
}
