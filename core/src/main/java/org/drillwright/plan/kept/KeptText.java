package org.drillwright.plan.kept;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.drillwright.mark.PlanMark;
import org.drillwright.plan.pair.Group;
import org.drillwright.plan.pair.Round;

/** A kept plan as YAML: the same plan gives the same text, of which its mark is taken. */
public final class KeptText {

    /** The form of these files. */
    public static final int FORM = 1;

    /** Words that read as themselves; all others stand in quotes. */
    private static final Pattern PLAIN = Pattern.compile("\\p{L}[\\p{L}\\p{M}\\p{N}_-]*( [\\p{L}\\p{M}\\p{N}_-]+)*");

    /** What other programs take for something else than a word. */
    private static final Pattern TAKEN =
            Pattern.compile("y|n|yes|no|on|off|true|false|null|none", Pattern.CASE_INSENSITIVE);

    private KeptText() {}

    /** The text of a file: what the plan says, its mark, and what it was made from, in the order given. */
    public static String file(Kept kept) {
        String said = of(kept.plan());
        int first = said.indexOf('\n') + 1;
        return said.substring(0, first)
                + "mark: " + kept.mark().shown() + "\n"
                + said.substring(first)
                + (kept.madeFrom().isEmpty() ? "" : "made-from: " + mapped(kept.madeFrom()) + "\n");
    }

    /** What the plan says, without mark and origin. */
    static String of(KeptPlan plan) {
        StringBuilder text = new StringBuilder();
        text.append("plan: ").append(FORM).append('\n');
        text.append("class: ").append(quoted(plan.named())).append('\n');
        text.append("date: ").append(plan.date()).append('\n');
        text.append("after: ")
                .append(plan.after().map(PlanMark::shown).orElse("none"))
                .append('\n');
        text.append("worked: ").append(plan.worked()).append('\n');
        text.append("drills: ").append(mapped(new TreeMap<>(plan.cards()))).append('\n');
        text.append("here: ").append(listed(plan.here())).append('\n');
        text.append("helpers: ").append(listed(plan.helpers())).append('\n');
        text.append("rounds:").append(plan.rounds().isEmpty() ? " []" : "").append('\n');
        plan.rounds().forEach(round -> round(round, text));
        return text.toString();
    }

    private static void round(Round round, StringBuilder text) {
        text.append("  - drill: ").append(quoted(round.drill())).append('\n');
        text.append("    groups:").append(round.groups().isEmpty() ? " []" : "").append('\n');
        for (Group group : round.groups()) {
            text.append("      - {")
                    .append(group.place() > 0 ? "post: " + group.place() + ", " : "")
                    .append("kind: ")
                    .append(group.kind().word())
                    .append(", people: ")
                    .append(listed(group.people()))
                    .append(named("helper", group.helper()))
                    .append(named("eyes", group.eyes()))
                    .append(named("middle", group.middle()))
                    .append("}\n");
        }
    }

    private static String named(String key, Optional<String> name) {
        return name.map(one -> ", " + key + ": " + quoted(one)).orElse("");
    }

    private static String mapped(Map<String, String> values) {
        return values.entrySet().stream()
                .map(value -> quoted(value.getKey()) + ": " + quoted(value.getValue()))
                .collect(Collectors.joining(", ", "{", "}"));
    }

    private static String listed(List<String> words) {
        return words.stream().map(KeptText::quoted).collect(Collectors.joining(", ", "[", "]"));
    }

    private static String quoted(String word) {
        boolean plain = PLAIN.matcher(word).matches() && !TAKEN.matcher(word).matches();
        return plain ? word : '"' + word.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
    }
}
