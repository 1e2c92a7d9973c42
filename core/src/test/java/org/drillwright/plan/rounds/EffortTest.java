package org.drillwright.plan.rounds;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.BitSet;
import java.util.Collections;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How often a class is begun anew and passed through: 60000 pairs, of students times students a round. */
class EffortTest {

    @ParameterizedTest(name = "{0} rounds of {1}: {2} beginnings, {3} passes, {4} of them for nothing")
    @CsvSource({
        "5,12,10,12,3", // 720 a pass: more than enough
        "2,50,10,12,3", // 5000 a pass: 12
        "10,30,6,6,3", // 9000 a pass: 6
        "3,50,8,8,3",
        "2,100,3,3,2", // 20000 a pass: 3
        "3,100,2,2,1",
        "10,100,1,2,1", // more than there is: one beginning and two passes all the same
        "0,0,10,12,3"
    })
    void the_larger_the_class_the_fewer_times_all_is_done_again(
            int rounds, int students, int beginnings, int passes, int stalls) {
        assertEquals(
                new Effort(beginnings, passes, stalls),
                Effort.of(new Problem(students, 0, Collections.nCopies(rounds, new BitSet()))));
    }

    @ParameterizedTest(name = "after {0} of 3 beginnings: {1}")
    @CsvSource({"1,true", "2,true", "3,false", "4,false"})
    void after_the_last_beginning_there_is_none(int begun, boolean more) {
        assertEquals(more, new Effort(3, 9, 9).allowsBeginningAfter(begun));
    }

    @ParameterizedTest(name = "after {0} of 4 passes, {1} of 2 for nothing: {2}")
    @CsvSource({"0,0,true", "3,1,true", "4,0,false", "3,2,false", "2,2,false", "4,2,false", "1,1,true"})
    void passes_end_after_the_last_or_after_too_many_for_nothing(int passed, int stalled, boolean more) {
        assertEquals(more, new Effort(9, 4, 2).allowsPassAfter(passed, stalled));
    }
}
