package org.drillwright.plan.course;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Finds the best plan of a small course by looking at every way in which each drill can go through the term, and at all of
 * them together. Slow, and written another way than the planner: it knows nothing of it but what is asked.
 */
final class ExactTerm {

    /** Earliest and latest week of each review after the one before. */
    private static final int[][] LADDER = {{1, 1}, {1, 3}, {2, 6}, {4, 12}};

    /**
     * One way of a drill through the term: the class in which it is new (-1 if it was known before, the number of classes if
     * it never is), and whether it is worked, class by class.
     */
    private static final class Line {

        private final int begun;
        private final boolean[] worked;
        private final long[] cost;

        Line(int begun, boolean[] worked, long[] cost) {
            this.begun = begun;
            this.worked = worked;
            this.cost = cost;
        }
    }

    private final Course course;
    private final int classes;
    private final List<List<Line>> lines = new ArrayList<>();
    private final List<long[]> least = new ArrayList<>();
    private final Line[] chosen;
    private final int[] minutes;
    private final int[] places;
    private long[] best;

    private ExactTerm(Course course) {
        this.course = course;
        this.classes = course.meetings().size();
        this.chosen = new Line[course.drills().size()];
        this.minutes = new int[classes];
        this.places = new int[classes];
        this.best = new long[] {Long.MAX_VALUE, 0, 0, 0};
        for (Asked asked : course.drills()) {
            List<Line> all = lines(asked);
            all.sort((one, other) -> Arrays.compare(one.cost, other.cost));
            lines.add(course.meetings().get(0).chances().isEmpty() ? spare(all) : all);
        }
        least.add(new long[4]);
        for (int drill = lines.size() - 1; drill >= 0; drill--) {
            least.add(0, sum(least.get(0), lines.get(drill).get(0).cost));
        }
    }

    /** The least costs: exam, fundamentals, late, early. A drill's needs have smaller numbers than itself. */
    static List<Long> costs(Course course) {
        ExactTerm exact = new ExactTerm(course);
        exact.choose(0, new long[4]);
        return Arrays.stream(exact.best).boxed().toList();
    }

    /** What one plan costs, and whether it is one: nothing if it breaks what must be kept. */
    static List<Long> costs(Course course, List<Cells> plan) {
        ExactTerm exact = new ExactTerm(course);
        long[] all = new long[4];
        for (int drill = 0; drill < course.drills().size(); drill++) {
            int begun = course.drills().get(drill).isIntroduced() ? -1 : exact.classes;
            boolean[] worked = new boolean[exact.classes];
            for (int at = 0; at < exact.classes; at++) {
                if (plan.get(at).asNew().contains(drill)) {
                    if (begun != exact.classes) {
                        return List.of();
                    }
                    begun = at;
                }
                worked[at] = plan.get(at).asNew().contains(drill)
                        || plan.get(at).again().contains(drill);
                boolean both = plan.get(at).asNew().contains(drill)
                        && plan.get(at).again().contains(drill);
                if (both || (worked[at] && begun > at)) {
                    return List.of();
                }
            }
            exact.chosen[drill] =
                    new Line(begun, worked, exact.cost(course.drills().get(drill), begun, worked));
            if ((begun >= 0 && begun < exact.classes && !exact.isReady(drill, begun))
                    || !exact.take(exact.chosen[drill], 1)) {
                return List.of();
            }
            all = sum(all, exact.chosen[drill].cost);
        }
        return Arrays.stream(all).boxed().toList();
    }

    private void choose(int drill, long[] cost) {
        if (drill == lines.size()) {
            best = Arrays.compare(cost, best) < 0 ? cost : best;
            return;
        }
        boolean[] ready = new boolean[classes];
        for (int at = 0; at < classes; at++) {
            ready[at] = isReady(drill, at);
        }
        for (Line line : lines.get(drill)) {
            long[] with = sum(cost, line.cost);
            if (Arrays.compare(sum(with, least.get(drill + 1)), best) >= 0) {
                return;
            }
            boolean open = line.begun < 0 || line.begun == classes || ready[line.begun];
            if (open && take(line, 1)) {
                chosen[drill] = line;
                choose(drill + 1, with);
                take(line, -1);
            }
        }
    }

    /** Takes time and place for a drill's way, or gives it back; whether there was room, else nothing is taken. */
    private boolean take(Line line, int sign) {
        boolean room = true;
        for (int at = 0; at < classes; at++) {
            boolean asNew = line.begun == at;
            minutes[at] += sign * (asNew ? course.newMinutes() : line.worked[at] ? course.againMinutes() : 0);
            places[at] += asNew ? sign : 0;
            ComingClass meeting = course.meetings().get(at);
            room &= minutes[at] <= meeting.minutes() && places[at] <= meeting.places();
        }
        if (sign > 0 && !room) {
            take(line, -1);
        }
        return room;
    }

    private List<Line> lines(Asked asked) {
        List<Line> all = new ArrayList<>();
        int first = asked.isIntroduced() ? -1 : 0;
        int last = asked.isIntroduced() ? -1 : classes;
        for (int begun = first; begun <= last; begun++) {
            int free = Math.max(0, classes - 1 - begun);
            for (int bits = 0; bits < 1 << free; bits++) {
                boolean[] worked = new boolean[classes];
                for (int at = 0; at < classes; at++) {
                    worked[at] = at == begun || (at > begun && (bits >> (at - begun - 1) & 1) == 1);
                }
                all.add(new Line(begun, worked, cost(asked, begun, worked)));
            }
        }
        return all;
    }

    /** Where nobody has to have met a drill, more work on it is worth nothing if it doesn't cost less. */
    private List<Line> spare(List<Line> sorted) {
        List<Line> kept = new ArrayList<>();
        for (Line line : sorted) {
            if (kept.stream().noneMatch(other -> other.begun == line.begun && isWithin(other, line))) {
                kept.add(line);
            }
        }
        return kept;
    }

    private boolean isWithin(Line less, Line more) {
        for (int at = 0; at < classes; at++) {
            if (less.worked[at] && !more.worked[at]) {
                return false;
            }
        }
        return true;
    }

    private long[] cost(Asked asked, int begun, boolean[] worked) {
        List<Long> days = new ArrayList<>();
        asked.past().forEach(day -> days.add(day.toEpochDay()));
        long examDay = course.exam().map(day -> day.toEpochDay()).orElse(Long.MAX_VALUE);
        for (int at = 0; at < classes; at++) {
            if (worked[at]) {
                days.add(course.meetings().get(at).date().toEpochDay());
            }
        }
        long start = course.meetings().get(0).date().toEpochDay();
        long end = course.meetings().get(classes - 1).date().toEpochDay() + 7;
        long exam = Math.max(
                0, asked.workings() - days.stream().filter(day -> day < examDay).count());
        long over = 0;
        if (asked.every().isPresent() && begun < classes) {
            long before = days.isEmpty() || (asked.known() && asked.past().isEmpty()) ? start : days.get(0);
            for (long day : days) {
                over += day < start
                        ? 0
                        : Math.max(0, weeks(before, day) - asked.every().getAsInt());
                before = day;
            }
            over += Math.max(0, weeks(before, end) - asked.every().getAsInt());
        }
        long early = begun < 0
                ? 0
                : (long) asked.value()
                        * (begun < classes ? course.meetings().get(begun).number() : course.classes());
        return new long[] {exam, over, late(days, start, end), early};
    }

    private static long late(List<Long> days, long start, long end) {
        if (days.isEmpty()) {
            return 0;
        }
        int step = 0;
        long counted = days.get(0);
        long late = 0;
        for (long day : days.subList(1, days.size())) {
            if (step < LADDER.length && weeks(counted, day) >= LADDER[step][0]) {
                late += day < start ? 0 : Math.max(0, weeks(counted, day) - LADDER[step][1]);
                counted = day;
                step++;
            }
        }
        return late + (step < LADDER.length ? Math.max(0, weeks(counted, end) - LADDER[step][1]) : 0);
    }

    private static long weeks(long from, long to) {
        return to <= from ? 0 : Math.max(1, (to - from + 3) / 7);
    }

    private boolean isReady(int drill, int begun) {
        Asked asked = course.drills().get(drill);
        ComingClass meeting = course.meetings().get(begun);
        double lacking = 0;
        double lackingHere = 0;
        double ready = 0;
        double here = 0;
        for (int person = 0; person < meeting.chances().size(); person++) {
            double chance = meeting.chances().get(person);
            here += chance;
            double met = chance;
            for (int need : asked.needs()) {
                met *= met(need, person, begun);
            }
            ready += met;
            if (asked.done().get(person) == 0) {
                lacking += 1;
                lackingHere += chance;
            }
        }
        boolean needsMet = asked.needs().stream().allMatch(need -> chosen[need].begun < begun);
        return needsMet && 2 * lackingHere > lacking - 1e-6 && 3 * ready > 2 * here - 1e-6;
    }

    private double met(int drill, int person, int before) {
        if (course.drills().get(drill).done().get(person) > 0) {
            return 1;
        }
        double never = 1;
        for (int at = 0; at < before; at++) {
            never *= chosen[drill].worked[at]
                    ? 1 - course.meetings().get(at).chances().get(person)
                    : 1;
        }
        return 1 - never;
    }

    private static long[] sum(long[] one, long[] other) {
        long[] sum = new long[4];
        for (int at = 0; at < sum.length; at++) {
            sum[at] = one[at] + other[at];
        }
        return sum;
    }
}
