package org.drillwright.plan.schedule;

import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import org.drillwright.model.Drill;
import org.drillwright.plan.attendance.Attendance;
import org.drillwright.plan.attendance.DrillDays;
import org.drillwright.plan.course.Asked;
import org.drillwright.plan.course.Cells;
import org.drillwright.plan.course.ComingClass;
import org.drillwright.plan.course.Course;
import org.drillwright.plan.course.CoursePlan;
import org.drillwright.plan.course.Planner;
import org.drillwright.plan.published.GroupCells;
import org.drillwright.plan.published.PublishedClass;
import org.drillwright.plan.published.PublishedTerm;
import org.drillwright.plan.roster.Knowledge;
import org.drillwright.plan.roster.Person;
import org.drillwright.plan.roster.Roster;
import org.drillwright.plan.term.Exam;
import org.drillwright.plan.term.Term;
import org.drillwright.plan.term.TermDay;
import org.drillwright.plan.term.TermGroup;
import org.drillwright.register.Entry;
import org.drillwright.register.History;
import org.drillwright.wording.Message;

/** Plans a term from what is on record: classes that are over are what they were, those to come are planned. */
public final class TermPlanner {

    /** A drill that so many of a group know needs no introduction; common practice, no source. */
    private static final double MOST = 2.0 / 3;

    /** If so many of those expected lack what is needed soon, all work it; common practice, no source. */
    private static final double QUARTER = 1.0 / 4;

    private static final int SOON = 2;

    private final Term term;
    private final Map<String, Drill> drills;
    private final Roster roster;
    private final History history;
    private final Duration frame;
    private final LocalDate today;

    /**
     * For one term on one day.
     *
     * @param drills those of the school, by id
     * @param history what is on record; what it tells of days behind {@code today} is left out
     * @param frame what opening, warm-up and closing take of each class
     */
    public TermPlanner(
            Term term, Map<String, Drill> drills, Roster roster, History history, Duration frame, LocalDate today) {
        this.term = term;
        this.drills = Map.copyOf(drills);
        this.roster = roster;
        this.history = history.before(today.plusDays(1));
        this.frame = frame;
        this.today = today;
    }

    /**
     * Plans it; what was published is followed unless something better is found.
     *
     * @param named the file of the term
     */
    public TermPlan plan(String named, Optional<PublishedTerm> published) {
        List<GroupPlan> groups = new ArrayList<>();
        List<Message> remarks = new ArrayList<>();
        for (TermGroup group : term.groups()) {
            groups.add(plan(group, published));
            remarks.addAll(TermRemarks.of(group, drills, roster, history));
        }
        remarks.addAll(unrecorded());
        return new TermPlan(named, term, today, groups, remarks);
    }

    private List<Message> unrecorded() {
        List<LocalDate> days = history.days();
        return term.days().stream()
                .map(TermDay::date)
                .filter(day -> day.isBefore(today) && !days.contains(day))
                .map(day -> Message.of(TermPlanner.class, "unrecorded", Message.day(day)))
                .toList();
    }

    private GroupPlan plan(TermGroup group, Optional<PublishedTerm> published) {
        Attendance attendance = Attendance.of(history, group.people());
        List<Entry> called = published
                .map(plan -> Called.of(group, plan, attendance, drills))
                .orElse(List.of());
        int over = (int) term.days().stream()
                .filter(day -> day.date().isBefore(today) || attendance.held().contains(day.date()))
                .count();
        List<TermDay> open = term.days().subList(over, term.days().size());
        GroupState state = new GroupState(
                group,
                attendance,
                DrillDays.of(history.with(called)),
                Knowledge.of(roster, history),
                Called.among(group, drills),
                known(group));
        Optional<CoursePlan> found = open.isEmpty() || group.drills().isEmpty()
                ? Optional.empty()
                : Optional.of(planned(course(state, over, open, published)));
        return new GroupTelling(term, state, frame, today, over, found).told(published);
    }

    private List<Boolean> known(TermGroup group) {
        LocalDate first = term.days().stream().findFirst().map(TermDay::date).orElse(today);
        Knowledge before = Knowledge.of(roster, history.before(first));
        return group.drills().stream()
                .map(drill -> {
                    long knowing = group.people().stream()
                            .filter(person -> before.knows(person, drill))
                            .count();
                    return knowing > 0 && knowing >= MOST * group.people().size();
                })
                .toList();
    }

    private Course course(GroupState state, int over, List<TermDay> open, Optional<PublishedTerm> published) {
        List<ComingClass> meetings = IntStream.range(0, open.size())
                .mapToObj(at -> meeting(state, over + at, open.get(at)))
                .toList();
        List<Cells> cells = published
                .map(plan -> open.stream()
                        .map(day -> cells(state.group(), plan, day))
                        .toList())
                .orElse(List.of());
        return new Course(
                state.group().drills().stream()
                        .map(drill -> asked(state, drill))
                        .toList(),
                meetings,
                term.days().size(),
                (int) term.pace().asNew().toMinutes(),
                (int) term.pace().again().toMinutes(),
                term.exam().map(Exam::date),
                cells,
                List.of());
    }

    private ComingClass meeting(GroupState state, int number, TermDay day) {
        List<Double> chances = state.group().people().stream()
                .map(person -> isAway(person, day) ? 0 : state.attendance().chance(person, day.date()))
                .toList();
        return new ComingClass(
                number,
                day.date(),
                (int) Math.max(0, day.length().minus(frame).toMinutes()),
                day.noNew() ? 0 : term.pace().newAClass(),
                chances);
    }

    private boolean isAway(String person, TermDay day) {
        return day.away().contains(person)
                || roster.person(person).filter(Person::away).isPresent();
    }

    private Asked asked(GroupState state, String drill) {
        List<String> order = state.group().drills();
        int number = order.indexOf(drill);
        Drill said = drills.get(drill);
        List<Integer> needs = said == null
                ? List.of()
                : said.needs().stream()
                        .map(order::indexOf)
                        .filter(at -> at >= 0 && at != number)
                        .toList();
        Integer every = term.fundamentals().get(drill);
        return new Asked(
                drill,
                needs,
                term.values().getOrDefault(drill, 1),
                every == null ? OptionalInt.empty() : OptionalInt.of(every),
                term.exam()
                        .filter(exam -> exam.drills().contains(drill))
                        .map(Exam::workings)
                        .orElse(0),
                state.days(drill),
                state.known().get(number),
                state.group().people().stream()
                        .map(person -> state.done(person, drill))
                        .toList());
    }

    private static Cells cells(TermGroup group, PublishedTerm plan, TermDay day) {
        return plan.of(day.key())
                .flatMap((PublishedClass one) -> one.of(group.name()))
                .map((GroupCells cells) ->
                        new Cells(Set.copyOf(numbers(group, cells.asNew())), Set.copyOf(numbers(group, cells.again()))))
                .orElse(Cells.NONE);
    }

    private static List<Integer> numbers(TermGroup group, List<String> drills) {
        return drills.stream()
                .map(group.drills()::indexOf)
                .filter(at -> at >= 0)
                .toList();
    }

    /** Planned; and once more if too many lack in the next class what is needed soon. */
    private static CoursePlan planned(Course course) {
        CoursePlan plan = Planner.plan(course);
        ComingClass next = course.meetings().get(0);
        List<Integer> lacked = IntStream.range(0, course.drills().size())
                .filter(drill -> course.drills().get(drill).isIntroduced())
                .filter(drill -> !plan.cells().get(0).works(drill))
                .filter(drill -> isNeededSoon(plan, drill))
                .filter(drill -> lacking(next, course.drills().get(drill)) >= QUARTER * next.expected())
                .boxed()
                .toList();
        return lacked.isEmpty() || next.expected() == 0 ? plan : Planner.plan(course.pinned(lacked));
    }

    private static boolean isNeededSoon(CoursePlan plan, int drill) {
        return plan.cells().stream()
                .limit(SOON)
                .flatMap(cells -> cells.asNew().stream())
                .anyMatch(other -> plan.course().drills().get(other).needs().contains(drill));
    }

    private static double lacking(ComingClass meeting, Asked asked) {
        return IntStream.range(0, meeting.chances().size())
                .filter(person -> asked.done().get(person) == 0)
                .mapToDouble(meeting.chances()::get)
                .sum();
    }
}
