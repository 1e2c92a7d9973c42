package org.drillwright.plan.course;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** Small courses for tests: a class each week, nobody looked at, as long as nothing else is said. */
final class Courses {

    static final LocalDate FIRST = LocalDate.of(2026, 9, 2);

    private final int classes;
    private int minutes = 60;
    private int newAClass = 1;
    private int newMinutes = 10;
    private int againMinutes = 5;
    private Optional<LocalDate> exam = Optional.empty();
    private final List<Integer> noNew = new ArrayList<>();
    private final List<Asked> drills = new ArrayList<>();
    private final Map<Integer, List<Double>> chances = new HashMap<>();
    private int people;

    private Courses(int classes) {
        this.classes = classes;
    }

    static Courses of(int classes) {
        return new Courses(classes);
    }

    static LocalDate week(int number) {
        return FIRST.plusWeeks(number);
    }

    Courses minutes(int each) {
        minutes = each;
        return this;
    }

    Courses newAClass(int most) {
        newAClass = most;
        return this;
    }

    Courses times(int asNew, int again) {
        newMinutes = asNew;
        againMinutes = again;
        return this;
    }

    /** A few days behind a class, by its number from 0. */
    Courses examBehind(int number) {
        exam = Optional.of(week(number).plusDays(3));
        return this;
    }

    Courses noNew(int number) {
        noNew.add(number);
        return this;
    }

    /** People who come to a class, by its number from 0; all classes alike unless they are said one by one. */
    Courses people(int count, int number, List<Double> come) {
        people = count;
        chances.put(number, come);
        return this;
    }

    Courses drill(String id, int value, int exam, List<Integer> needs) {
        return drill(id, value, exam, OptionalInt.of(6), needs, List.of());
    }

    Courses drill(String id, int value, int exam, OptionalInt every, List<Integer> needs, List<LocalDate> past) {
        List<Integer> done = new ArrayList<>();
        for (int person = 0; person < people; person++) {
            done.add(0);
        }
        drills.add(new Asked(id, needs, value, every, exam, past, !past.isEmpty(), done));
        return this;
    }

    Course build() {
        List<ComingClass> meetings = new ArrayList<>();
        for (int at = 0; at < classes; at++) {
            meetings.add(new ComingClass(
                    at, week(at), minutes, noNew.contains(at) ? 0 : newAClass, chances.getOrDefault(at, List.of())));
        }
        return new Course(drills, meetings, classes, newMinutes, againMinutes, exam, List.of(), List.of());
    }
}
