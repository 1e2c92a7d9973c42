package org.drillwright.check.fencing;

import java.util.List;
import java.util.stream.Collectors;
import org.drillwright.check.Coverage;
import org.drillwright.check.Rule;
import org.drillwright.check.RuleText;
import org.drillwright.check.Subject;
import org.drillwright.source.Findings;
import org.drillwright.source.Severity;

/** Every count could be judged. */
public final class FullyChecked implements Rule {

    private static final RuleText TEXT = new RuleText(
            "fully-checked",
            Severity.WARNING,
            false,
            "All that a rule asks of a count is known: its words, lines, measure and masks.",
            "Silence is not approval: what could not be judged is said, so that somebody looks at it.",
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
                "Not known here: " + first.unknown().stream().sorted().collect(Collectors.joining(", "))
                        + (first.since().isEmpty() ? "" : " (since " + first.since() + ")") + "."
                        + unread(first) + " State it in words of the trade.");
    }

    private static String unread(Coverage.Gap gap) {
        List<String> quoted = gap.words().stream().map(word -> "'" + word + "'").toList();
        return quoted.isEmpty() ? "" : " Not read: " + String.join(", ", quoted) + ".";
    }
}
