package org.drillwright.plan.kept;

import java.util.Optional;
import java.util.TreeMap;
import org.drillwright.mark.PlanMark;
import org.drillwright.plan.pair.Group;
import org.drillwright.plan.pair.Round;
import org.drillwright.plan.pair.Walk;

/** A kept plan as YAML: the same plan gives the same text, of which its mark is taken. */
public final class KeptText {

    /** The form of these files. */
    public static final int FORM = 1;

    /** The way that lines walk. */
    public static final String WAY = "up";

    private KeptText() {}

    /** The text of a file: what the plan says, its mark, and what it was made from, in the order given. */
    public static String file(Kept kept) {
        String said = of(kept.plan());
        int first = said.indexOf('\n') + 1;
        return said.substring(0, first)
                + "mark: " + kept.mark().shown() + "\n"
                + said.substring(first)
                + (kept.madeFrom().isEmpty() ? "" : "made-from: " + YamlWords.mapped(kept.madeFrom()) + "\n");
    }

    /** What the plan says, without mark and origin. */
    static String of(KeptPlan plan) {
        StringBuilder text = new StringBuilder();
        text.append("plan: ").append(FORM).append('\n');
        text.append("class: ").append(YamlWords.quoted(plan.named())).append('\n');
        text.append("date: ").append(plan.date()).append('\n');
        text.append("after: ")
                .append(plan.after().map(PlanMark::shown).orElse("none"))
                .append('\n');
        text.append("worked: ").append(plan.worked()).append('\n');
        text.append("drills: ")
                .append(YamlWords.mapped(new TreeMap<>(plan.cards())))
                .append('\n');
        text.append("here: ").append(YamlWords.listed(plan.here())).append('\n');
        text.append("helpers: ").append(YamlWords.listed(plan.helpers())).append('\n');
        text.append("rounds:").append(plan.rounds().isEmpty() ? " []" : "").append('\n');
        plan.rounds().forEach(round -> round(round, text));
        text.append(plan.walks().isEmpty() ? "" : "walk:\n");
        plan.walks().forEach(walk -> walk(walk, text));
        return text.toString();
    }

    private static void round(Round round, StringBuilder text) {
        text.append("  - drill: ").append(YamlWords.quoted(round.drill())).append('\n');
        text.append("    groups:").append(round.groups().isEmpty() ? " []" : "").append('\n');
        for (Group group : round.groups()) {
            text.append("      - {")
                    .append(group.place() > 0 ? "post: " + group.place() + ", " : "")
                    .append("kind: ")
                    .append(group.kind().word())
                    .append(", people: ")
                    .append(YamlWords.listed(group.people()))
                    .append(named("helper", group.helper()))
                    .append(named("eyes", group.eyes()))
                    .append(named("middle", group.middle()))
                    .append("}\n");
        }
    }

    private static void walk(Walk walk, StringBuilder text) {
        text.append("  - {from: ")
                .append(walk.from())
                .append(", to: ")
                .append(walk.to())
                .append(", stays: ")
                .append(YamlWords.listed(walk.stays()))
                .append(", moves: ")
                .append(YamlWords.listed(walk.moves()))
                .append(", way: ")
                .append(WAY)
                .append("}\n");
    }

    private static String named(String key, Optional<String> name) {
        return name.map(one -> ", " + key + ": " + YamlWords.quoted(one)).orElse("");
    }
}
