package org.drillwright.plan.course;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What is to be planned for one group: the classes that are still to come, and how things stand before them.
 *
 * @param drills in the order in which they are to be taught
 * @param meetings the classes to come, in order; not empty
 * @param classes how many the whole term has
 * @param newMinutes what a drill takes when it is new
 * @param againMinutes what it takes when it comes again
 * @param exam its day, if there is one
 * @param published what the plan that was published last says of the classes to come; empty if none was
 * @param pinned what has to come again in the first of the classes to come
 */
public record Course(
        List<Asked> drills,
        List<ComingClass> meetings,
        int classes,
        int newMinutes,
        int againMinutes,
        Optional<LocalDate> exam,
        List<Cells> published,
        List<Integer> pinned) {

    public Course {
        drills = List.copyOf(drills);
        meetings = List.copyOf(meetings);
        published = List.copyOf(published);
        pinned = List.copyOf(pinned);
    }

    /** The same with what has to come again in the first class. */
    public Course pinned(List<Integer> again) {
        return new Course(drills, meetings, classes, newMinutes, againMinutes, exam, published, again);
    }

    Asked drill(int number) {
        return drills.get(number);
    }

    LocalDate day(int meeting) {
        return meetings.get(meeting).date();
    }

    /** When what isn't done in the term could be done at the earliest: a week after its last class. */
    LocalDate after() {
        return day(meetings.size() - 1).plusDays(Weeks.DAYS);
    }

    /** The class behind one, or the first day after the term. */
    LocalDate next(int meeting) {
        return meeting + 1 < meetings.size() ? day(meeting + 1) : after();
    }

    boolean isBeforeExam(LocalDate day) {
        return exam.filter(date -> !day.isBefore(date)).isEmpty();
    }

    /** How many classes are before the exam; all if there is none. */
    int beforeExam() {
        return (int) meetings.stream()
                .filter(meeting -> isBeforeExam(meeting.date()))
                .count();
    }

    /** How many drills can be new in a class. */
    int places(int meeting) {
        ComingClass one = meetings.get(meeting);
        return Math.min(one.places(), one.minutes() / newMinutes);
    }

    int minutes(Cells cells) {
        return cells.asNew().size() * newMinutes + cells.again().size() * againMinutes;
    }

    /** The days on which a drill is worked, past and planned. */
    List<LocalDate> days(int drill, List<Cells> plan) {
        List<LocalDate> days = new ArrayList<>(drill(drill).past());
        for (int at = 0; at < plan.size(); at++) {
            if (plan.get(at).works(drill)) {
                days.add(day(at));
            }
        }
        return days;
    }
}
