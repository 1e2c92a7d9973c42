package org.drillwright.tell;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.drillwright.plan.progress.PersonDrill;
import org.drillwright.plan.roster.Naming;
import org.drillwright.plan.schedule.CatchUp;
import org.drillwright.plan.schedule.ClassRow;
import org.drillwright.plan.schedule.GroupPlan;
import org.drillwright.plan.schedule.Taught;
import org.drillwright.plan.schedule.TermPlan;

/** A term, a line for each class, for a terminal. */
public final class TermText {

    private final TermPlan plan;
    private final boolean why;
    private final Page page = new Page();

    private TermText(TermPlan plan, boolean why) {
        this.plan = plan;
        this.why = why;
    }

    /**
     * Tells all of it.
     *
     * @param standing how it stands to what was published, one sentence
     * @param why whether the reason of each drill is told
     */
    public static String of(TermPlan plan, String standing, boolean why) {
        return new TermText(plan, why).told(standing);
    }

    private String told(String standing) {
        page.line(title(plan) + ", as of " + plan.today() + ". " + standing);
        plan.groups().forEach(this::group);
        page.list("To know:", plan.remarks());
        return page.toString();
    }

    /** What a term is called. */
    public static String title(TermPlan plan) {
        return plan.term().title().isEmpty() ? plan.named() : plan.term().title();
    }

    private void group(GroupPlan group) {
        page.gap()
                .line(group.group().name() + ", "
                        + people(group.group().people().size()) + ":");
        for (int at = 0; at < group.classes().size(); at++) {
            row(at + 1, group.classes().get(at));
        }
        page.gap();
        exam(group).forEach(sentence -> page.wrapped("  ", sentence));
        page.wrapped("  ", group.verdict());
        page.list("Changed since it was published:", group.changed());
        page.list("Missed, and not yet caught up:", catchUps(group, Naming.full(), drill -> drill));
        page.list("Not introduced in any class this term:", left(group, drill -> drill));
        page.list("Ready to be signed off, if you agree:", ready(group));
    }

    private static String people(int count) {
        return count == 1 ? "1 person" : count + " people";
    }

    private void row(int number, ClassRow row) {
        String mark = "  " + Page.padded(String.valueOf(number), 3) + row.day().date() + "  ";
        List<String> parts = new ArrayList<>();
        if (!row.asNew().isEmpty()) {
            parts.add("new " + drills(row.asNew()));
        }
        if (!row.again().isEmpty()) {
            parts.add("again " + drills(row.again()));
        }
        if (row.over()) {
            parts.add(parts.isEmpty() ? "over, nothing on record" : "over");
            parts.add(Math.round(row.expected()) + " came");
        } else {
            if (parts.isEmpty()) {
                parts.add("nothing");
            }
            parts.add(row.used() + " of " + row.minutes() + " min");
            parts.add(Math.round(row.expected()) + " expected");
        }
        if (!row.lacking().isEmpty()) {
            parts.add("lacking: " + people(row.lacking()));
        }
        page.wrapped(mark, String.join("; ", parts));
        if (why && !row.over()) {
            row.asNew().forEach(taught -> reason(taught, "new"));
            row.again().forEach(taught -> reason(taught, "again"));
        }
    }

    private void reason(Taught taught, String how) {
        page.wrapped(
                "       ", taught.drill() + " " + how + ": " + taught.reason().because() + ".");
    }

    private static String drills(List<Taught> taught) {
        return taught.stream().map(Taught::drill).collect(Collectors.joining(", "));
    }

    /** Each once, however much they lack. */
    private static String people(List<PersonDrill> lacking) {
        return lacking.stream().map(PersonDrill::person).distinct().collect(Collectors.joining(", "));
    }

    /** What is to be said of the exam. */
    public static List<String> exam(GroupPlan group) {
        List<String> sentences = new ArrayList<>();
        if (group.missing() > 0) {
            sentences.add("For the exam, " + Page.counted(group.missing(), "working") + " will be missing: "
                    + group.shortOf().entrySet().stream()
                            .sorted(Map.Entry.comparingByKey())
                            .map(one -> one.getKey() + " (" + one.getValue() + ")")
                            .collect(Collectors.joining(", "))
                    + ".");
            group.crowd().ifPresent(sentences::add);
        }
        return sentences;
    }

    /**
     * What was missed, and how it is caught up, one sentence for each drill.
     *
     * @param title what a drill is called, by its id
     */
    public static List<String> catchUps(GroupPlan group, Naming names, UnaryOperator<String> title) {
        return group.catchUps().stream()
                .map(missed -> sentence(missed, names, title))
                .toList();
    }

    private static String sentence(CatchUp missed, Naming names, UnaryOperator<String> title) {
        String who = title.apply(missed.drill()) + ": "
                + missed.people().stream().map(names::of).collect(Collectors.joining(", ")) + "; ";
        if (missed.needed().isPresent()) {
            return who + "five minutes with a helper before " + missed.needed().get() + ".";
        }
        return who
                + missed.on()
                        .map(LocalDate::toString)
                        .map(day -> "new to it on " + day + ", so put them with somebody who knows it.")
                        .orElse("five minutes with a helper; it doesn't come up again.");
    }

    /**
     * What is new in no class, and why, one sentence for each drill.
     *
     * @param title what a drill is called, by its id
     */
    public static List<String> left(GroupPlan group, UnaryOperator<String> title) {
        return group.left().entrySet().stream()
                .map(one -> title.apply(one.getKey()) + ": " + one.getValue() + ".")
                .toList();
    }

    private static List<String> ready(GroupPlan group) {
        Map<String, List<String>> drills = new LinkedHashMap<>();
        group.ready()
                .forEach(one -> drills.computeIfAbsent(one.person(), person -> new ArrayList<>())
                        .add(one.drill()));
        return drills.entrySet().stream()
                .map(one -> one.getKey() + ": " + String.join(", ", one.getValue()))
                .toList();
    }
}
