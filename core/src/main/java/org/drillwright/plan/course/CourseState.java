package org.drillwright.plan.course;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How things stand before a class, if all goes as planned and people come as often as they use to. Changes as it goes on. */
final class CourseState {

    /** Of those who need a drill, so many must be expected when it is new; common practice, no source. */
    private static final double HALF = 1.0 / 2;

    /** So many of those expected must have met what a drill needs; tried in terms that were played, no other source. */
    private static final double TWO_THIRDS = 2.0 / 3;

    private static final double ROUNDING = 1e-9;

    private final Course course;
    private final List<Optional<Climb>> climbs = new ArrayList<>();
    private final boolean[] introduced;
    private final int[] beforeExam;
    private final double[][] missing;
    private final double[][] done;

    CourseState(Course course) {
        this.course = course;
        int drills = course.drills().size();
        int people = course.meetings().get(0).chances().size();
        introduced = new boolean[drills];
        beforeExam = new int[drills];
        missing = new double[drills][people];
        done = new double[drills][people];
        for (int drill = 0; drill < drills; drill++) {
            Asked asked = course.drill(drill);
            climbs.add(Climb.of(asked.past()));
            introduced[drill] = asked.isIntroduced();
            beforeExam[drill] =
                    (int) asked.past().stream().filter(course::isBeforeExam).count();
            for (int person = 0; person < people; person++) {
                done[drill][person] = asked.done().get(person);
                missing[drill][person] = asked.done().get(person) > 0 ? 0 : 1;
            }
        }
    }

    boolean isIntroduced(int drill) {
        return introduced[drill];
    }

    Optional<Climb> climb(int drill) {
        return climbs.get(drill);
    }

    /** How many workings the exam still wants of a drill. */
    int shortForExam(int drill) {
        return Math.max(0, course.drill(drill).workings() - beforeExam[drill]);
    }

    /** Why a drill can't be new in a class, whatever its time; nothing if it can. */
    Optional<Hindrance> hindrance(int drill, int meeting) {
        Asked asked = course.drill(drill);
        Optional<Integer> need =
                asked.needs().stream().filter(one -> !introduced[one]).findFirst();
        if (need.isPresent()) {
            return Optional.of(new Hindrance(Hindrance.Kind.NEEDS_FIRST, need.get()));
        }
        List<Double> chances = course.meetings().get(meeting).chances();
        double lacking = 0;
        double lackingHere = 0;
        double here = 0;
        double ready = 0;
        for (int person = 0; person < chances.size(); person++) {
            double chance = chances.get(person);
            if (asked.done().get(person) == 0) {
                lacking++;
                lackingHere += chance;
            }
            double met = 1;
            for (int one : asked.needs()) {
                met *= 1 - missing[one][person];
            }
            here += chance;
            ready += chance * met;
        }
        if (lackingHere < HALF * lacking - ROUNDING) {
            return Optional.of(new Hindrance(Hindrance.Kind.FEW_EXPECTED, drill));
        }
        return ready < TWO_THIRDS * here - ROUNDING
                ? Optional.of(new Hindrance(Hindrance.Kind.FEW_READY, drill))
                : Optional.empty();
    }

    /** How many of those expected are short of the days after which a drill may be signed off. */
    double shortOf(int drill, int meeting) {
        List<Double> chances = course.meetings().get(meeting).chances();
        double sum = 0;
        for (int person = 0; person < chances.size(); person++) {
            sum += done[drill][person] < Asked.ENOUGH - ROUNDING ? chances.get(person) : 0;
        }
        return sum;
    }

    /** Goes on behind a class. */
    void work(int meeting, Cells cells) {
        LocalDate day = course.day(meeting);
        List<Double> chances = course.meetings().get(meeting).chances();
        for (int drill : cells.all()) {
            introduced[drill] = true;
            climbs.set(
                    drill,
                    Optional.of(climbs.get(drill).map(so -> so.worked(day)).orElseGet(() -> Climb.from(day))));
            beforeExam[drill] += course.isBeforeExam(day) ? 1 : 0;
            for (int person = 0; person < chances.size(); person++) {
                missing[drill][person] *= 1 - chances.get(person);
                done[drill][person] += chances.get(person);
            }
        }
    }
}
