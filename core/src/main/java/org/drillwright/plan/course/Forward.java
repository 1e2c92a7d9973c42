package org.drillwright.plan.course;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/** One pass through the classes to come: each is filled with what can't wait, then with what is best. */
final class Forward {

    private final Course course;
    private final Tried tried;
    private final Deadlines latest;
    private final CourseState state;
    private final List<Cells> plan = new ArrayList<>();
    private Set<Integer> asNew = new TreeSet<>();
    private Set<Integer> again = new TreeSet<>();
    private int at;
    private int left;

    private Forward(Course course, Tried tried, Deadlines latest) {
        this.course = course;
        this.tried = tried;
        this.latest = latest;
        this.state = new CourseState(course);
    }

    static List<Cells> plan(Course course, Tried tried, Deadlines latest) {
        return new Forward(course, tried, latest).planned();
    }

    private List<Cells> planned() {
        for (at = 0; at < course.meetings().size(); at++) {
            asNew = new TreeSet<>();
            again = new TreeSet<>();
            left = course.meetings().get(at).minutes();
            fill();
            Cells cells = new Cells(asNew, again);
            state.work(at, cells);
            plan.add(cells);
        }
        return List.copyOf(plan);
    }

    private void fill() {
        if (at == 0) {
            course.pinned().forEach(this::again);
        }
        if (tried.published() && at < course.published().size()) {
            course.published().get(at).asNew().stream().sorted().forEach(this::introduce);
            course.published().get(at).again().stream().sorted().forEach(this::again);
        }
        again(drill -> state.shortForExam(drill) > 0
                && course.isBeforeExam(course.day(at))
                && state.shortForExam(drill) >= course.beforeExam() - at);
        introductions(drill -> tried.force().get(drill) == at);
        tried.order().stream()
                .filter(drill -> latest.of(drill) <= at)
                .sorted(Comparator.comparingInt(latest::of))
                .forEach(this::introduce);
        again(this::cannotWait);
        introductions(drill -> tried.hold().get(drill) <= at && canBeNew(drill) && leavesRoom(drill));
        again(drill -> state.climb(drill)
                .filter(climb -> climb.isWished(course.day(at)))
                .isPresent());
        again(drill -> state.shortForExam(drill) > 0 && course.isBeforeExam(course.day(at)));
        spare();
    }

    /** Reviews and fundamentals that would be late in the next class, the latest first. */
    private boolean cannotWait(int drill) {
        LocalDate next = course.next(at);
        Optional<Climb> climb = state.climb(drill);
        OptionalInt every = course.drill(drill).every();
        boolean over = every.isPresent()
                && Weeks.between(climb.map(Climb::last).orElse(course.day(0)), next) > every.getAsInt();
        return over
                || climb.filter(so -> so.late(next) > 0 && so.counts(course.day(at)))
                        .isPresent();
    }

    private void again(IntPredicate wanted) {
        IntStream.range(0, course.drills().size())
                .filter(drill -> state.isIntroduced(drill) && wanted.test(drill))
                .boxed()
                .sorted(Comparator.comparing(this::lateness).reversed())
                .forEach(this::again);
    }

    /** How late a drill's review is in the next class, so that of two the one that is worse off comes first. */
    private int lateness(int drill) {
        return state.climb(drill)
                .flatMap(climb -> climb.next().map(rung -> climb.gap(course.next(at)) - rung.latest()))
                .orElse(Integer.MIN_VALUE);
    }

    private void introductions(IntPredicate wanted) {
        tried.order().stream().filter(wanted::test).forEach(this::introduce);
    }

    private void again(int drill) {
        if (state.isIntroduced(drill) && !again.contains(drill) && left >= course.againMinutes()) {
            again.add(drill);
            left -= course.againMinutes();
        }
    }

    private void introduce(int drill) {
        if (canBeNew(drill)) {
            asNew.add(drill);
            left -= course.newMinutes();
        }
    }

    private boolean canBeNew(int drill) {
        return fits(drill) && state.hindrance(drill, at).isEmpty();
    }

    private boolean fits(int drill) {
        return !state.isIntroduced(drill)
                && !asNew.contains(drill)
                && asNew.size() < course.meetings().get(at).places()
                && left >= course.newMinutes();
    }

    /** Whether the reviews of all that is known so far, and of what is new today, come no later for one more drill. */
    private boolean leavesRoom(int drill) {
        Set<Integer> with = new TreeSet<>(asNew);
        with.add(drill);
        long late = new ReviewForecast(course, state, at, again, with).late();
        return late == 0 || late <= new ReviewForecast(course, state, at, again, asNew).late();
    }

    /** Spare minutes go where most of those expected are short of days. */
    private void spare() {
        if (left < course.againMinutes()) {
            return;
        }
        Map<Integer, Double> lacking = new HashMap<>();
        for (int drill = 0; drill < course.drills().size(); drill++) {
            double people = state.isIntroduced(drill) && !again.contains(drill) ? state.shortOf(drill, at) : 0;
            if (people > 0) {
                lacking.put(drill, people);
            }
        }
        lacking.keySet().stream()
                .sorted(Comparator.<Integer>comparingDouble(drill -> -lacking.getOrDefault(drill, 0.0))
                        .thenComparing(Comparator.naturalOrder()))
                .forEach(this::again);
    }
}
