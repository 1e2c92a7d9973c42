package org.drillwright.check.form;

import org.drillwright.check.Rule;
import org.drillwright.check.RuleText;
import org.drillwright.check.Subject;
import org.drillwright.model.Drill;
import org.drillwright.model.Form;
import org.drillwright.model.Side;
import org.drillwright.source.FieldPath;
import org.drillwright.source.Findings;
import org.drillwright.source.Severity;
import org.drillwright.source.Written;

/** Each count has something for both sides. */
public final class TurnMissing implements Rule {

    private static final RuleText TEXT = new RuleText(
            "turn-missing",
            Severity.ERROR,
            false,
            "Every count says what each of the two does; 'hold' and 'wait' will do, silence will not.",
            "A fencer who is told nothing does whatever comes to mind.",
            """
            steps:
              - leader: Advance.
            #   ^^^^^^^^^^^^^^^^
                distance: advance-lunge to lunge
            """,
            """
            steps:
              - leader: Advance.
                follower: Hold on guard.
                distance: advance-lunge to lunge
              - leader: Retreat.
                follower: Hold on guard.
                distance: lunge to advance-lunge
            start: On guard in sixte, blades apart, at advance-lunge distance.
            """);

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public void judge(Subject subject, Findings findings) {
        Drill drill = subject.drill();
        if (drill.steps().isEmpty()) {
            findings.error(
                    TEXT.id(),
                    subject.keySpan(FieldPath.of("steps")),
                    "The drill has no counts.",
                    "Write at least one: - leader: …");
        }
        for (Subject.Place turn : subject.turns()) {
            if (drill.steps().get(turn.step()).turn(turn.side()).isEmpty()) {
                report(subject, turn.step(), turn.side(), findings);
            }
        }
    }

    private static void report(Subject subject, int step, Side side, Findings findings) {
        boolean callersWord = subject.drill().form() == Form.SOLO && side == Side.LEADER;
        findings.error(
                TEXT.id(),
                subject.spanInStep(step, ""),
                "Count " + subject.count(step) + " has nothing for the " + side.word() + ".",
                callersWord
                        ? "Write what the caller says: 'leader: " + call(subject.printedWords(step, Side.FOLLOWER))
                                + "'."
                        : "Write what the " + side.word() + " does, even if it is '" + side.word() + ": Hold.'.");
    }

    /** The class's own words as a call, where they are one short sentence. */
    private static String call(Written turn) {
        String words = turn.text().strip().replaceFirst("[.!]$", "");
        boolean callable = words.matches("[\\p{L}\\p{M}' -]{1,30}");
        return (callable ? words : "One") + "!";
    }
}
