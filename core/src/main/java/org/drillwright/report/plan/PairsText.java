package org.drillwright.report.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.drillwright.plan.evening.ClassPlan;
import org.drillwright.plan.kept.PrintedState;
import org.drillwright.plan.lesson.Remark;
import org.drillwright.plan.pair.Group;
import org.drillwright.plan.pair.PairingPlan;
import org.drillwright.plan.pair.Round;
import org.drillwright.plan.pair.WalkChoice;
import org.drillwright.plan.roster.Naming;
import org.drillwright.wording.Message;

/** Rounds of partners for a terminal. */
public final class PairsText {

    private PairsText() {}

    /** @param choices ways to change over, with their prices */
    public static String of(
            ClassPlan plan,
            PairingPlan pairs,
            List<WalkChoice> choices,
            PrintedState standing,
            Naming names,
            Locale language) {
        TerminalPage page = new TerminalPage(language);
        page.line(Message.counted(PairsText.class, "rounds", pairs.rounds().size(), ClassHead.of(plan))
                .capital());
        page.line(said("first.leads"));
        plan.remarks().forEach(remark -> page.wrapped("", remark.sentence()));
        for (Round round : pairs.rounds()) {
            round(round, plan, pairs, names, page);
        }
        if (pairs.rounds().isEmpty()) {
            page.list(said("no.partner.drill"), Remark.sentences(plan.lesson().advice()));
        }
        page.list(said("changing.over"), ChangeWords.of(pairs.changes()));
        choices(choices, page);
        List<Message> facts = new ArrayList<>(pairs.facts());
        facts.addAll(GroupWords.threes(pairs, plan::repetitions));
        page.list(said("to.know"), facts);
        page.list(said("since.printed"), standing.remarks());
        pairs.verdict()
                .ifPresent(verdict ->
                        page.gap().line(said("found.by", pairs.method().words(), verdict.sentence())));
        page.gap().line(standing.sentence());
        return page.toString();
    }

    /** One line for each way, in columns. */
    private static void choices(List<WalkChoice> choices, TerminalPage page) {
        if (choices.isEmpty()) {
            return;
        }
        page.gap().line(said("ways"));
        String usual = page.said(said("usual"));
        int name = width(choices, choice -> page.said(choice.name()));
        int effort = width(choices, choice -> page.said(choice.effort()));
        int price = width(choices, choice -> page.said(choice.price()));
        for (WalkChoice choice : choices) {
            String asked = (choice.word().isEmpty() ? "" : "--walk " + choice.word())
                    + (choice.usual() ? (choice.word().isEmpty() ? usual : "  (" + usual + ")") : "");
            page.line(("  " + padded(page.said(choice.name()), name) + padded(page.said(choice.effort()), effort)
                            + padded(page.said(choice.price()), price) + asked)
                    .stripTrailing());
        }
    }

    private static int width(List<WalkChoice> choices, Function<WalkChoice, String> words) {
        return choices.stream().map(words).mapToInt(String::length).max().orElse(0);
    }

    private static String padded(String words, int width) {
        return words + " ".repeat(width - words.length() + 3);
    }

    private static void round(Round round, ClassPlan plan, PairingPlan pairs, Naming names, TerminalPage page) {
        boolean played = round.number() <= pairs.firstPlanned();
        page.gap().line(said(played ? "round.played" : "round", round.number(), plan.title(round.drill())));
        for (Group group : round.groups()) {
            String place = group.place() == 0 ? "-" : String.valueOf(group.place());
            Message remark = GroupWords.remark(group, names);
            page.line(" ".repeat(Math.max(0, 4 - place.length())) + place + "  "
                    + page.said(GroupWords.people(group, names))
                    + (remark.isEmpty() ? "" : " (" + page.said(remark) + ")"));
        }
        List<String> movers = pairs.movers(round.number());
        if (!pairs.isStepped(round.number()) && !movers.isEmpty()) {
            page.wrapped(
                    "      ",
                    said(
                            "new.place",
                            Message.words(movers.stream().map(names::of).toList())));
        }
    }

    private static Message said(String key, Object... values) {
        return Message.of(PairsText.class, key, values);
    }
}
