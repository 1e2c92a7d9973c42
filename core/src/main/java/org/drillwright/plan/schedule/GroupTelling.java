package org.drillwright.plan.schedule;

import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.drillwright.plan.course.Asked;
import org.drillwright.plan.course.Cells;
import org.drillwright.plan.course.CoursePlan;
import org.drillwright.plan.course.Reason;
import org.drillwright.plan.course.Reasons;
import org.drillwright.plan.progress.PersonDrill;
import org.drillwright.plan.progress.Ready;
import org.drillwright.plan.published.PublishedTerm;
import org.drillwright.plan.term.Term;
import org.drillwright.plan.term.TermDay;
import org.drillwright.wording.Message;

/** Puts what was found in figures back into names and days. */
record GroupTelling(
        Term term, GroupState state, Duration frame, LocalDate today, int over, Optional<CoursePlan> found) {

    GroupPlan told(Optional<PublishedTerm> published) {
        List<ClassRow> rows = new ArrayList<>();
        for (int at = 0; at < over; at++) {
            rows.add(past(term.days().get(at)));
        }
        List<Map<Integer, Reason>> reasons = found.map(Reasons::of).orElse(List.of());
        for (int at = over; at < term.days().size(); at++) {
            TermDay day = term.days().get(at);
            rows.add(found.isPresent() ? open(day, at - over, found.get(), reasons.get(at - over)) : nothing(day));
        }
        List<String> drills = state.group().drills();
        return new GroupPlan(
                state.group(),
                rows,
                catchUps(),
                drills.stream()
                        .filter(term.fundamentals()::containsKey)
                        .map(this::fundamental)
                        .toList(),
                shortOf(),
                found,
                Ready.of(state.group().people(), drills, state.alone(), state.worked(), state.knowledge(), today),
                published.map(plan -> TermChanges.of(state.group(), rows, plan)).orElse(List.of()),
                left());
    }

    private int minutes(TermDay day) {
        return (int) Math.max(0, day.length().minus(frame).toMinutes());
    }

    private ClassRow nothing(TermDay day) {
        return new ClassRow(day, false, List.of(), List.of(), minutes(day), 0, List.of());
    }

    private ClassRow past(TermDay day) {
        List<Taught> asNew = new ArrayList<>();
        List<Taught> again = new ArrayList<>();
        for (String drill : state.group().drills()) {
            List<LocalDate> days = state.days(drill);
            if (days.contains(day.date())) {
                boolean first = days.get(0).equals(day.date())
                        && !state.known().get(state.group().drills().indexOf(drill));
                Reason reason = new Reason(Message.of(GroupTelling.class, "on.record"), 0, Optional.empty());
                (first ? asNew : again).add(taught(drill, first, reason));
            }
        }
        long came = state.attendance().number(day.date(), state.group().people().stream());
        return new ClassRow(day, true, asNew, again, minutes(day), came, List.of());
    }

    private Taught taught(String drill, boolean asNew, Reason reason) {
        Duration time = asNew ? term.pace().asNew() : term.pace().again();
        return new Taught(drill, (int) time.toMinutes(), reason);
    }

    private ClassRow open(TermDay day, int at, CoursePlan plan, Map<Integer, Reason> reasons) {
        Cells cells = plan.cells().get(at);
        List<Taught> asNew = new ArrayList<>();
        List<Taught> again = new ArrayList<>();
        for (int drill : cells.all()) {
            boolean first = cells.asNew().contains(drill);
            Reason reason = reasons.getOrDefault(drill, new Reason(Message.none(), 0, Optional.empty()));
            (first ? asNew : again).add(taught(state.group().drills().get(drill), first, reason));
        }
        return new ClassRow(
                day,
                false,
                asNew,
                again,
                plan.course().meetings().get(at).minutes(),
                plan.course().meetings().get(at).chances().stream()
                        .mapToDouble(Double::doubleValue)
                        .sum(),
                lacking(at, plan));
    }

    /** Who is new to what comes again here for the first time, or to what is needed and doesn't come again before. */
    private List<PersonDrill> lacking(int at, CoursePlan plan) {
        List<Integer> wanted = new ArrayList<>(plan.cells().get(at).again());
        plan.cells()
                .get(at)
                .asNew()
                .forEach(
                        drill -> wanted.addAll(plan.course().drills().get(drill).needs()));
        List<Double> chances = plan.course().meetings().get(at).chances();
        List<String> people = state.group().people();
        List<PersonDrill> lacking = new ArrayList<>();
        wanted.stream().distinct().sorted().forEach(drill -> {
            if (plan.course().drills().get(drill).isIntroduced()
                    && workedNext(drill, plan).filter(next -> next < at).isEmpty()) {
                for (int person = 0; person < people.size(); person++) {
                    String id = state.group().drills().get(drill);
                    if (chances.get(person) > 0 && state.lacks(people.get(person), id)) {
                        lacking.add(new PersonDrill(people.get(person), id));
                    }
                }
            }
        });
        return lacking;
    }

    private static Optional<Integer> workedNext(int drill, CoursePlan plan) {
        for (int at = 0; at < plan.cells().size(); at++) {
            if (plan.cells().get(at).works(drill)) {
                return Optional.of(at);
            }
        }
        return Optional.empty();
    }

    private List<CatchUp> catchUps() {
        List<CatchUp> all = new ArrayList<>();
        found.ifPresent(plan -> {
            for (int drill = 0; drill < plan.course().drills().size(); drill++) {
                catchUp(drill, plan).ifPresent(all::add);
            }
        });
        return all;
    }

    /** Of a drill that was on, or is known to most and needed by what is still to be new. */
    private Optional<CatchUp> catchUp(int drill, CoursePlan plan) {
        Asked asked = plan.course().drills().get(drill);
        List<String> people = state.lacking(asked.id());
        Optional<Integer> needed = neededIn(drill, plan);
        boolean missed = !asked.past().isEmpty() || (asked.known() && needed.isPresent());
        if (people.isEmpty() || !missed) {
            return Optional.empty();
        }
        Optional<Integer> next = workedNext(drill, plan);
        Optional<Integer> before =
                needed.filter(at -> next.filter(so -> so <= at).isEmpty());
        return Optional.of(
                new CatchUp(asked.id(), people, next.map(at -> day(at, plan)), before.map(at -> day(at, plan))));
    }

    private static LocalDate day(int at, CoursePlan plan) {
        return plan.course().meetings().get(at).date();
    }

    private static Optional<Integer> neededIn(int drill, CoursePlan plan) {
        for (int at = 0; at < plan.cells().size(); at++) {
            boolean needed = plan.cells().get(at).asNew().stream()
                    .anyMatch(other -> plan.course().drills().get(other).needs().contains(drill));
            if (needed) {
                return Optional.of(at);
            }
        }
        return Optional.empty();
    }

    private Fundamental fundamental(String drill) {
        List<LocalDate> days = state.days(drill);
        int number = state.group().drills().indexOf(drill);
        return new Fundamental(
                drill,
                term.fundamentals().getOrDefault(drill, 0),
                days.isEmpty() ? Optional.empty() : Optional.of(days.get(days.size() - 1)),
                found.flatMap(plan -> workedNext(number, plan).map(at -> day(at, plan))));
    }

    private Map<String, Integer> shortOf() {
        Map<String, Integer> all = new TreeMap<>();
        term.exam().ifPresent(exam -> {
            for (String drill : exam.drills()) {
                if (state.group().drills().contains(drill)) {
                    long worked = state.days(drill).stream()
                            .filter(day -> day.isBefore(exam.date()))
                            .count();
                    worked +=
                            found.map(plan -> planned(drill, exam.date(), plan)).orElse(0L);
                    if (worked < exam.workings()) {
                        all.put(drill, (int) (exam.workings() - worked));
                    }
                }
            }
        });
        return all;
    }

    private long planned(String drill, LocalDate exam, CoursePlan plan) {
        int number = state.group().drills().indexOf(drill);
        long count = 0;
        for (int at = 0; at < plan.cells().size(); at++) {
            count += plan.cells().get(at).works(number) && day(at, plan).isBefore(exam) ? 1 : 0;
        }
        return count;
    }

    private Map<String, Message> left() {
        Map<String, Message> left = new LinkedHashMap<>();
        found.map(Reasons::left)
                .orElse(Map.of())
                .forEach((drill, because) -> left.put(state.group().drills().get(drill), because));
        return left;
    }
}
