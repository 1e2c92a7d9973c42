package org.drillwright.report.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.drillwright.plan.progress.PersonDrill;
import org.drillwright.plan.roster.Naming;
import org.drillwright.plan.schedule.CatchUp;
import org.drillwright.plan.schedule.ClassRow;
import org.drillwright.plan.schedule.GroupPlan;
import org.drillwright.plan.schedule.Taught;
import org.drillwright.plan.schedule.TermPlan;
import org.drillwright.report.DisplayWidth;
import org.drillwright.wording.Message;

/** A term, a line for each class, for a terminal. */
public final class TermText {

    private final TermPlan plan;
    private final boolean why;
    private final TerminalPage page;

    private TermText(TermPlan plan, boolean why, Locale language) {
        this.plan = plan;
        this.why = why;
        this.page = new TerminalPage(language);
    }

    /**
     * Tells all of it.
     *
     * @param standing how it stands to what was published, one sentence
     * @param why whether the reason of each drill is told
     */
    public static String of(TermPlan plan, Message standing, boolean why, Locale language) {
        return new TermText(plan, why, language).told(standing);
    }

    private String told(Message standing) {
        page.line(said("term", title(plan), Message.day(plan.today()), standing));
        plan.groups().forEach(this::group);
        page.list(said("term.to.know"), plan.remarks());
        return page.toString();
    }

    /** What a term is called. */
    public static String title(TermPlan plan) {
        return plan.term().title().isEmpty() ? plan.named() : plan.term().title();
    }

    private void group(GroupPlan group) {
        page.gap()
                .line(Message.counted(
                        TermText.class,
                        "group",
                        group.group().people().size(),
                        group.group().name()));
        List<String> days = group.classes().stream()
                .map(row -> page.said(Message.day(row.day().date())))
                .toList();
        int width = days.stream().mapToInt(DisplayWidth::of).max().orElse(0);
        for (int at = 0; at < group.classes().size(); at++) {
            String number = TerminalPage.padded(String.valueOf(at + 1), 3);
            row(
                    "  " + number + TerminalPage.padded(days.get(at), width) + "  ",
                    group.classes().get(at));
        }
        page.gap();
        exam(group).forEach(sentence -> page.wrapped("  ", sentence));
        page.wrapped("  ", group.verdict());
        page.list(said("term.changed"), group.changed());
        page.list(said("term.missed"), catchUps(group, Naming.full(), drill -> drill));
        page.list(said("term.left"), left(group, drill -> drill));
        page.list(said("term.ready"), ready(group));
    }

    private void row(String mark, ClassRow row) {
        List<Message> parts = new ArrayList<>();
        if (!row.asNew().isEmpty()) {
            parts.add(said("row.new", drills(row.asNew())));
        }
        if (!row.again().isEmpty()) {
            parts.add(said("row.again", drills(row.again())));
        }
        if (row.over()) {
            parts.add(said(parts.isEmpty() ? "row.over.nothing" : "row.over"));
            parts.add(said("row.came", Math.round(row.expected())));
        } else {
            if (parts.isEmpty()) {
                parts.add(said("row.nothing"));
            }
            parts.add(said("row.minutes", row.used(), row.minutes()));
            parts.add(said("row.expected", Math.round(row.expected())));
        }
        if (!row.lacking().isEmpty()) {
            parts.add(said("row.lacking", people(row.lacking())));
        }
        page.wrapped(mark, Message.clauses(parts));
        if (why && !row.over()) {
            row.asNew().forEach(taught -> reason(taught, "reason.new"));
            row.again().forEach(taught -> reason(taught, "reason.again"));
        }
    }

    private void reason(Taught taught, String how) {
        page.wrapped("       ", said(how, taught.drill(), taught.reason().because()));
    }

    private static Message drills(List<Taught> taught) {
        return Message.words(taught.stream().map(Taught::drill).toList());
    }

    /** Each once, however much they lack. */
    private static Message people(List<PersonDrill> lacking) {
        return Message.words(
                lacking.stream().map(PersonDrill::person).distinct().toList());
    }

    /** What is to be said of the exam. */
    public static List<Message> exam(GroupPlan group) {
        if (group.missing() == 0) {
            return List.of();
        }
        List<String> drills = group.shortOf().entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .map(one -> one.getKey() + " (" + one.getValue() + ")")
                .toList();
        Message missing = Message.counted(TermText.class, "exam", group.missing(), Message.words(drills));
        return Stream.concat(Stream.of(missing), group.crowd().stream()).toList();
    }

    /**
     * What was missed, and how it is caught up, one sentence for each drill.
     *
     * @param title what a drill is called, by its id
     */
    public static List<Message> catchUps(GroupPlan group, Naming names, UnaryOperator<String> title) {
        return group.catchUps().stream()
                .map(missed -> sentence(missed, names, title))
                .toList();
    }

    private static Message sentence(CatchUp missed, Naming names, UnaryOperator<String> title) {
        String drill = title.apply(missed.drill());
        Message who = Message.words(missed.people().stream().map(names::of).toList());
        if (missed.needed().isPresent()) {
            return said("missed.needed", drill, who, Message.day(missed.needed().get()));
        }
        return missed.on()
                .map(day -> said("missed.again", drill, who, Message.day(day)))
                .orElseGet(() -> said("missed.never", drill, who));
    }

    /**
     * What is new in no class, and why, one sentence for each drill.
     *
     * @param title what a drill is called, by its id
     */
    public static List<Message> left(GroupPlan group, UnaryOperator<String> title) {
        return group.left().entrySet().stream()
                .map(one -> said("ended", said("titled", title.apply(one.getKey()), one.getValue())))
                .toList();
    }

    private static List<Message> ready(GroupPlan group) {
        Map<String, List<String>> drills = new LinkedHashMap<>();
        group.ready()
                .forEach(one -> drills.computeIfAbsent(one.person(), person -> new ArrayList<>())
                        .add(one.drill()));
        return drills.entrySet().stream()
                .map(one -> said("titled", one.getKey(), Message.words(one.getValue())))
                .toList();
    }

    private static Message said(String key, Object... values) {
        return Message.of(TermText.class, key, values);
    }
}
