package org.drillwright.plan.course;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Small terms that were planned by hand; the ladder of reviews is a choice, no source. */
class PlannerTest {

    /** Such as {@code "A | a | | a"}: new in the first class, again in the second and the fourth. */
    private static String told(CoursePlan plan) {
        return plan.cells().stream()
                .map(cells -> cells.all().stream()
                        .map(drill -> cells.asNew().contains(drill)
                                ? plan.course().drill(drill).id()
                                : plan.course().drill(drill).id().toLowerCase(java.util.Locale.ROOT))
                        .collect(Collectors.joining(" ")))
                .collect(Collectors.joining(" | "));
    }

    private static List<Long> costs(CoursePlan plan) {
        return plan.row().upTo(Goal.EARLY).costs();
    }

    private static void isBest(Course course, String told, Long... costs) {
        CoursePlan plan = Planner.plan(course);
        assertEquals(told, told(plan));
        assertEquals(Arrays.asList(costs), costs(plan));
        assertEquals(Arrays.asList(costs), ExactTerm.costs(course, plan.cells()), "as another counts it");
        assertEquals(Arrays.asList(costs), ExactTerm.costs(course), "as another finds it");
        assertTrue(plan.isProvedBest());
    }

    @Test
    void one_drill_comes_again_after_one_week_and_after_two_more() {
        Course course = Courses.of(6).minutes(20).drill("A", 1, 0, List.of()).build();
        isBest(course, "A | a |  | a |  | ", 0L, 0L, 0L, 0L);
        Climb climb = Climb.of(course.days(0, Planner.plan(course).cells())).orElseThrow();
        assertEquals(Optional.of(Courses.week(9)), climb.due(), "the third review is owed in the tenth class");
        assertTrue(climb.isWished(Courses.week(7)), "and wished in the eighth");
    }

    @Test
    void a_chain_of_needs_up_to_an_exam() {
        Course course = Courses.of(6)
                .minutes(40)
                .examBehind(5)
                .drill("A", 1, 0, List.of())
                .drill("B", 1, 0, List.of(0))
                .drill("C", 1, 3, List.of(1))
                .build();
        CoursePlan plan = Planner.plan(course);
        assertEquals(List.of(0L, 0L, 0L, 3L), costs(plan));
        assertEquals(
                List.of(0, 1, 2),
                List.of(plan.newIn(0).get(), plan.newIn(1).get(), plan.newIn(2).get()));
        assertTrue(plan.cells().get(3).again().contains(2)
                && plan.cells().get(4).again().contains(2));
        assertTrue(plan.isProvedBest());
    }

    @Test
    void the_same_with_an_exam_that_is_too_early() {
        Course course = Courses.of(6)
                .minutes(40)
                .examBehind(3)
                .drill("A", 1, 0, List.of())
                .drill("B", 1, 0, List.of(0))
                .drill("C", 1, 3, List.of(1))
                .build();
        CoursePlan plan = Planner.plan(course);
        assertEquals(List.of(1L, 0L, 0L, 3L), costs(plan));
        assertEquals(-1, Deadlines.of(course).of(0), "A would have to be new a class before the first");
        assertEquals(1, plan.bound().row().of(Goal.EXAM));
        assertTrue(plan.isProvedBest());
    }

    @Test
    void more_drills_are_due_for_the_exam_than_have_room() {
        Course course = Courses.of(5)
                .minutes(60)
                .examBehind(4)
                .drill("A", 1, 3, List.of())
                .drill("B", 1, 3, List.of())
                .drill("C", 1, 3, List.of())
                .drill("D", 1, 3, List.of())
                .build();
        CoursePlan plan = Planner.plan(course);
        assertEquals(List.of(1L, 0L, 0L, 6L), costs(plan));
        assertEquals(
                Optional.of(new CourseBound.Crowd(4, 3, Optional.of(Courses.week(2)), 1)),
                plan.bound().crowd());
        assertTrue(plan.isProvedBest());
    }

    @Test
    void a_short_class_has_room_for_one_that_is_new_beside_a_review() {
        isBest(
                Courses.of(3)
                        .minutes(15)
                        .newAClass(2)
                        .drill("A", 1, 0, List.of())
                        .drill("B", 1, 0, List.of())
                        .build(),
                "A | a B | b",
                0L,
                0L,
                0L,
                1L);
    }

    @Test
    void nothing_new_where_nothing_new_is_wished() {
        isBest(
                Courses.of(4)
                        .minutes(30)
                        .noNew(1)
                        .drill("A", 1, 0, List.of())
                        .drill("B", 1, 0, List.of(0))
                        .build(),
                "A | a | B | a b",
                0L,
                0L,
                0L,
                2L);
    }

    @Test
    void what_is_worth_more_comes_first() {
        isBest(
                Courses.of(3)
                        .minutes(20)
                        .drill("A", 1, 0, List.of())
                        .drill("B", 3, 0, List.of())
                        .build(),
                "B | A b | a",
                0L,
                0L,
                0L,
                1L);
    }

    @Test
    void a_review_that_is_late_already_comes_at_once() {
        Course course = Courses.of(8)
                .drill("F", 1, 0, OptionalInt.of(6), List.of(), List.of(Courses.week(-4)))
                .build();
        CoursePlan plan = Planner.plan(course);
        assertTrue(plan.cells().get(0).again().contains(0));
        assertEquals(List.of(0L, 0L, 3L, 0L), costs(plan));
        assertTrue(plan.isProvedBest());
    }

    @ParameterizedTest(name = "worked in weeks {0}: late {1}")
    @CsvSource({"0 1 3 7, 0", "0 1 2 7, 0", "0 2 3 7, 1", "0 1 3 10, 1"})
    void three_reviews_are_late_by_weeks(String weeks, long late) {
        List<Cells> cells = new ArrayList<>();
        List<Integer> worked =
                Arrays.stream(weeks.split(" ")).map(Integer::valueOf).toList();
        int last = worked.get(worked.size() - 1);
        for (int at = 0; at <= last; at++) {
            cells.add(
                    at == 0
                            ? new Cells(java.util.Set.of(0), java.util.Set.of())
                            : worked.contains(at) ? new Cells(java.util.Set.of(), java.util.Set.of(0)) : Cells.NONE);
        }
        Course course = Courses.of(last + 1)
                .drill("A", 1, 0, OptionalInt.empty(), List.of(), List.of())
                .build();
        assertEquals(late, CourseCost.of(course, cells).of(Goal.LATE));
        assertEquals(3, Climb.of(course.days(0, cells)).orElseThrow().steps());
    }

    /** Days of a class that is moved by up to three days are in its week. */
    @ParameterizedTest(name = "{0} days: {1}")
    @CsvSource({"0, 0", "1, 1", "3, 1", "7, 1", "10, 1", "11, 2", "14, 2", "17, 2", "18, 3"})
    void weeks_are_counted_to_the_nearest(int days, int weeks) {
        LocalDate day = LocalDate.of(2026, 9, 2);
        assertEquals(weeks, Weeks.between(day, day.plusDays(days)));
    }

    @Test
    void the_same_course_gives_the_same_plan() {
        Course course = RandomCourses.of(17);
        assertEquals(Planner.plan(course), Planner.plan(course));
    }
}
