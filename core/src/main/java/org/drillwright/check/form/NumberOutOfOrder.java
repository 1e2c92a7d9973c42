package org.drillwright.check.form;

import java.util.OptionalInt;
import org.drillwright.check.Rule;
import org.drillwright.check.RuleText;
import org.drillwright.check.Subject;
import org.drillwright.source.Findings;
import org.drillwright.source.Severity;
import org.drillwright.wording.Message;

/** Written numbers run from 1 without a gap. */
public final class NumberOutOfOrder implements Rule {

    private static final RuleText TEXT =
            new RuleText(NumberOutOfOrder.class, "number-out-of-order", Severity.ERROR, false);

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
                        Message.of(NumberOutOfOrder.class, "number-out-of-order.what", expected, number.getAsInt()),
                        Message.of(NumberOutOfOrder.class, "number-out-of-order.way", expected));
            }
        }
    }
}
