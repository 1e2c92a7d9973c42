package org.drillwright.plan.course;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The planner beside a slow solver that is written another way. */
class PlannerAgainstExactTest {

    @Test
    void a_sample() {
        holds(IntStream.range(0, 40));
    }

    @Test
    @Tag("deep")
    void many() {
        holds(IntStream.range(40, 700));
    }

    /** Plans are never below what is possible, and mostly there; where one is said to be the best, it is. */
    private static void holds(IntStream seeds) {
        int[] all = new int[1];
        int[] best = new int[1];
        seeds.forEach(seed -> {
            Course course = RandomCourses.of(seed);
            CoursePlan plan = Planner.plan(course);
            List<Long> cost = plan.row().upTo(Goal.EARLY).costs();
            assertEquals(cost, ExactTerm.costs(course, plan.cells()), "seed " + seed + ": recounted");
            Row least = new Row(ExactTerm.costs(course));
            assertTrue(plan.row().upTo(Goal.EARLY).compareTo(least) >= 0, "seed " + seed + ": below the least");
            assertFalse(plan.bound().row().compareTo(least) > 0, "seed " + seed + ": a bound above the least");
            boolean there = cost.equals(least.costs());
            assertTrue(there || !plan.isProvedBest(), "seed " + seed + ": said to be proved");
            all[0]++;
            best[0] += there ? 1 : 0;
        });
        assertTrue(best[0] * 10 >= all[0] * 9, best[0] + " of " + all[0] + " are the best");
    }
}
