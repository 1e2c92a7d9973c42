package org.drillwright.tell;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.plan.evening.ClassPlan;
import org.drillwright.plan.kept.Standing;
import org.drillwright.plan.pair.Group;
import org.drillwright.plan.pair.PairingPlan;
import org.drillwright.plan.pair.Round;
import org.drillwright.plan.roster.Naming;

/** Rounds of partners for a terminal. */
public final class PairsText {

    private PairsText() {}

    public static String of(ClassPlan plan, PairingPlan pairs, Standing standing, Naming names) {
        Page page = new Page();
        page.line(ClassHead.of(plan) + ", " + Page.counted(pairs.rounds().size(), "round") + " of partners.");
        page.line("Whoever is named first leads first.");
        plan.remarks().forEach(remark -> page.wrapped("", remark));
        for (Round round : pairs.rounds()) {
            round(round, plan, pairs, names, page);
        }
        if (pairs.rounds().isEmpty()) {
            page.list("No drill for partners is in this lesson", plan.lesson().advice());
        }
        page.list("Changing over", pairs.walk());
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
        if (!pairs.method().isWalked() && !movers.isEmpty()) {
            page.wrapped(
                    "      ",
                    "To a new place: "
                            + String.join(", ", movers.stream().map(names::of).toList()));
        }
    }
}
