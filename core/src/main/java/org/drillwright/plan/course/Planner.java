package org.drillwright.plan.course;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.random.RandomGenerator;
import java.util.stream.IntStream;

/**
 * Plans a course: the same course gives the same plan. A few passes in plain orders, then a fixed number in orders and with
 * wishes that are changed a little each time, of which what is no worse is kept.
 */
public final class Planner {

    /** Passes behind the plain ones. They are counted, not timed, so that a slow machine finds the same plan. */
    static final int PASSES = 150;

    /** From so many on, as classes times drills times drills, there are fewer passes: a large term takes seconds, too. */
    private static final long LARGE = 60_000;

    private static final int FEWEST = 4;
    private static final long SEED = 12;

    private final Course course;
    private final Deadlines latest;
    private final CourseBound bound;
    private CoursePlan best;
    private Tried bestTried;

    private Planner(Course course) {
        this.course = course;
        this.latest = Deadlines.of(course);
        this.bound = CourseBound.of(course);
        this.bestTried = Tried.in(drills(course), !course.published().isEmpty());
        this.best = pass(bestTried);
    }

    private static List<Integer> drills(Course course) {
        return IntStream.range(0, course.drills().size()).boxed().toList();
    }

    /** @param course with a class to come and a drill at least */
    public static CoursePlan plan(Course course) {
        Planner planner = new Planner(course);
        planner.plain();
        planner.search();
        return planner.best;
    }

    private CoursePlan pass(Tried tried) {
        List<Cells> cells = Forward.plan(course, tried, latest);
        return new CoursePlan(course, cells, CourseCost.of(course, cells), bound);
    }

    private void plain() {
        List<Integer> byValue = new ArrayList<>(drills(course));
        byValue.sort(Comparator.comparingInt(drill -> -course.drill(drill).value()));
        List<Integer> byLatest = new ArrayList<>(drills(course));
        byLatest.sort(Comparator.comparingInt(latest::of));
        for (List<Integer> order : List.of(drills(course), byValue, byLatest)) {
            keep(Tried.in(order, false));
        }
    }

    private boolean keep(Tried tried) {
        CoursePlan found = pass(tried);
        if (found.row().compareTo(best.row()) <= 0) {
            best = found;
            bestTried = tried;
            return true;
        }
        return false;
    }

    private void search() {
        RandomGenerator random = new Random(SEED);
        for (int pass = 0; pass < passes() && !isDone(); pass++) {
            List<Integer> now = drills(course).stream()
                    .map(drill -> best.newIn(drill).orElse(-1))
                    .toList();
            keep(bestTried.changed(now, random));
        }
    }

    private int passes() {
        long drills = course.drills().size();
        long size = course.meetings().size() * drills * drills;
        return (int) Math.max(FEWEST, Math.min(PASSES, PASSES * LARGE / size));
    }

    /** Nothing can be gained any more: proved best, nothing changed and nobody missed. */
    private boolean isDone() {
        return best.isProvedBest()
                && best.row().of(Goal.CHANGED) == 0
                && best.row().of(Goal.MISSED) == 0;
    }
}
