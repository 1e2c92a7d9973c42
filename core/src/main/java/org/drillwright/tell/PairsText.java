package org.drillwright.tell;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.drillwright.plan.evening.ClassPlan;
import org.drillwright.plan.kept.Standing;
import org.drillwright.plan.lesson.Remark;
import org.drillwright.plan.pair.Group;
import org.drillwright.plan.pair.PairingPlan;
import org.drillwright.plan.pair.Round;
import org.drillwright.plan.pair.WalkChoice;
import org.drillwright.plan.roster.Naming;

/** Rounds of partners for a terminal. */
public final class PairsText {

    private PairsText() {}

    /** @param choices ways to change over, with their prices */
    public static String of(
            ClassPlan plan, PairingPlan pairs, List<WalkChoice> choices, Standing standing, Naming names) {
        Page page = new Page();
        page.line(ClassHead.of(plan) + ", " + Page.counted(pairs.rounds().size(), "round") + " of partners.");
        page.line("The first name leads first.");
        plan.remarks().forEach(remark -> page.wrapped("", remark.sentence()));
        for (Round round : pairs.rounds()) {
            round(round, plan, pairs, names, page);
        }
        if (pairs.rounds().isEmpty()) {
            page.list(
                    "There is no partner drill in this lesson",
                    Remark.sentences(plan.lesson().advice()));
        }
        page.list("Changing over", ChangeWords.of(pairs.changes()));
        choices(choices, page);
        List<String> facts = new ArrayList<>(pairs.facts());
        facts.addAll(GroupWords.threes(pairs, plan::repetitions));
        page.list("To know", facts);
        page.list("Since it was printed", standing.remarks());
        pairs.verdict()
                .ifPresent(
                        verdict -> page.gap().line("Found by: " + pairs.method().words() + ". " + verdict.sentence()));
        page.gap().line(standing.sentence());
        return page.toString();
    }

    /** One line for each way, in columns. */
    private static void choices(List<WalkChoice> choices, Page page) {
        if (choices.isEmpty()) {
            return;
        }
        page.gap().line("Ways to change over:");
        int name = width(choices, WalkChoice::name);
        int effort = width(choices, WalkChoice::effort);
        int price = width(choices, WalkChoice::price);
        for (WalkChoice choice : choices) {
            String asked = (choice.word().isEmpty() ? "" : "--walk " + choice.word())
                    + (choice.usual() ? (choice.word().isEmpty() ? "the usual" : "  (the usual)") : "");
            page.line(("  " + padded(choice.name(), name) + padded(choice.effort(), effort)
                            + padded(choice.price(), price) + asked)
                    .stripTrailing());
        }
    }

    private static int width(List<WalkChoice> choices, Function<WalkChoice, String> words) {
        return choices.stream().map(words).mapToInt(String::length).max().orElse(0);
    }

    private static String padded(String words, int width) {
        return words + " ".repeat(width - words.length() + 3);
    }

    private static void round(Round round, ClassPlan plan, PairingPlan pairs, Naming names, Page page) {
        boolean played = round.number() <= pairs.firstPlanned();
        page.gap().line("Round " + round.number() + ": " + plan.title(round.drill()) + (played ? " (played)" : ""));
        for (Group group : round.groups()) {
            String place = group.place() == 0 ? "-" : String.valueOf(group.place());
            String remark = GroupWords.remark(group, names);
            page.line(" ".repeat(Math.max(0, 4 - place.length())) + place + "  " + GroupWords.people(group, names)
                    + (remark.isEmpty() ? "" : " (" + remark + ")"));
        }
        List<String> movers = pairs.movers(round.number());
        if (!pairs.isStepped(round.number()) && !movers.isEmpty()) {
            page.wrapped(
                    "      ",
                    "To a new place: "
                            + String.join(", ", movers.stream().map(names::of).toList()));
        }
    }
}
