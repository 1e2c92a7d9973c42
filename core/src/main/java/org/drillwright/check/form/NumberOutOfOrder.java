package org.drillwright.check.form;

import java.util.OptionalInt;
import org.drillwright.check.Rule;
import org.drillwright.check.RuleText;
import org.drillwright.check.Subject;
import org.drillwright.source.Findings;
import org.drillwright.source.Severity;

/** Written numbers run from 1 without a gap. */
public final class NumberOutOfOrder implements Rule {

    private static final RuleText TEXT = new RuleText(
            "number-out-of-order",
            Severity.ERROR,
            false,
            "If counts are numbered, they run 1, 2, 3 without a gap.",
            "The class moves on the number it hears; a number that is missing or repeated stops the class.",
            """
            steps:
              - number: 1
                leader: Advance.
                follower: Hold on guard.
                distance: advance-lunge to lunge
              - number: 3
            #           ^
                leader: Retreat.
                follower: Hold on guard.
                distance: lunge to advance-lunge
            start: On guard in sixte, blades apart, at advance-lunge distance.
            """,
            """
            steps:
              - number: 1
                leader: Advance.
                follower: Hold on guard.
                distance: advance-lunge to lunge
              - number: 2
                leader: Retreat.
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
        for (int step = 0; step < subject.drill().steps().size(); step++) {
            OptionalInt number = subject.drill().steps().get(step).number();
            int expected = step + 1;
            if (number.isPresent() && number.getAsInt() != expected) {
                findings.error(
                        TEXT.id(),
                        subject.span(Subject.stepPath(step).key("number")),
                        "This count should be number " + expected + ", but " + number.getAsInt() + " is written.",
                        "Write 'number: " + expected + "', or leave all numbers out.");
            }
        }
    }
}
