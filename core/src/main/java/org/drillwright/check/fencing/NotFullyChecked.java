package org.drillwright.check.fencing;

import java.util.List;
import java.util.stream.Collectors;
import org.drillwright.check.Coverage;
import org.drillwright.check.Rule;
import org.drillwright.check.RuleText;
import org.drillwright.check.Subject;
import org.drillwright.source.FieldPath;
import org.drillwright.source.Findings;
import org.drillwright.source.Severity;

/** Every count could be judged. */
public final class NotFullyChecked implements Rule {

    private static final String WAY_OUT = " Say it in fencing terms.";

    private static final RuleText TEXT = new RuleText(
            "not-fully-checked",
            Severity.WARNING,
            false,
            "Everything the rules ask about is known: the words, lines, distance and masks of each count, and"
                    + " the start, opening and closing.",
            "Silence is not approval: what could not be judged is listed, so that somebody looks at it.",
            """
            steps:
              - leader: Wobble gracefully.
            #   ^^^^^^^^^^^^^^^^^^^^^^^^^^
                follower: Hold on guard.
                distance: lunge
            """,
            """
            steps:
              - leader: Extend to the high inside line and lunge.
                follower: Parry quarte.
                distance: lunge
                safety: Arrive softly and let the blade bend.
              - leader: Recover on guard in sixte.
                follower: Return to guard in sixte.
                distance: extension to lunge
            """);

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public void judge(Subject subject, Findings findings) {
        judgeCounts(subject, findings);
        for (Coverage.End end : subject.coverage().ends()) {
            findings.warning(
                    TEXT.id(),
                    subject.span(FieldPath.of(end.part())),
                    "Not fully checked: the " + end.part() + ".",
                    "Unknown here: " + String.join(", ", end.unknown()) + "." + unread(end.words()) + WAY_OUT);
        }
    }

    private static void judgeCounts(Subject subject, Findings findings) {
        List<Coverage.Gap> gaps = subject.coverage().gaps();
        if (gaps.isEmpty()) {
            return;
        }
        String counts = gaps.stream()
                .map(gap -> Integer.toString(subject.count(gap.step())))
                .collect(Collectors.joining(", "));
        Coverage.Gap first = gaps.get(0);
        findings.warning(
                TEXT.id(),
                subject.spanInStep(first.step(), ""),
                "Not fully checked: count" + (gaps.size() == 1 ? " " : "s ") + counts + ".",
                "Unknown here: " + first.unknown().stream().sorted().collect(Collectors.joining(", "))
                        + (first.since().isEmpty() ? "" : " (since " + first.since() + ")") + "."
                        + unread(first.words()) + WAY_OUT);
    }

    private static String unread(List<String> words) {
        List<String> quoted = words.stream().map(word -> "'" + word + "'").toList();
        return quoted.isEmpty() ? "" : " Not read: " + String.join(", ", quoted) + ".";
    }
}
