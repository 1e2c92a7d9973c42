package org.drillwright.check.fencing;

import org.drillwright.check.Rule;
import org.drillwright.check.RuleText;
import org.drillwright.check.Subject;
import org.drillwright.model.Side;
import org.drillwright.notation.Position;
import org.drillwright.phrase.Fact;
import org.drillwright.source.FieldPath;
import org.drillwright.source.Findings;
import org.drillwright.source.Severity;
import org.drillwright.terms.Terms;
import org.drillwright.wording.Message;

/** The opening leads to the guard that the start states. */
public final class OpeningLeadsElsewhere implements Rule {

    private static final RuleText TEXT =
            new RuleText(OpeningLeadsElsewhere.class, "opening-leads-elsewhere", Severity.WARNING, false);

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public void judge(Subject subject, Findings findings) {
        for (Side side : Side.values()) {
            Fact<Position> opened = subject.replay().opened().of(side).hand();
            Fact<Position> start = subject.replay().start().of(side).hand();
            if (opened.isKnown() && start.isKnown() && !opened.equals(start)) {
                findings.warning(
                        TEXT.id(),
                        subject.span(FieldPath.of("opening")),
                        Message.of(
                                OpeningLeadsElsewhere.class,
                                "opening-leads-elsewhere.what",
                                Terms.of(side),
                                position(opened),
                                position(start)),
                        Message.of(OpeningLeadsElsewhere.class, "opening-leads-elsewhere.way"));
                return;
            }
        }
    }

    private static Message position(Fact<Position> hand) {
        return hand.value().map(Terms::of).orElse(Message.none());
    }
}
