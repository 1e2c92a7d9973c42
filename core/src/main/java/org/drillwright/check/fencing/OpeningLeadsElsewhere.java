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

/** The opening leads to the guard that the start states. */
public final class OpeningLeadsElsewhere implements Rule {

    private static final RuleText TEXT = new RuleText(
            "opening-leads-elsewhere",
            Severity.WARNING,
            false,
            "The opening brings each of the two into the guard given in 'start'.",
            "An assistant reads the opening out, and the class then stands as it was told, not as 'start' says.",
            """
            opening: Salute. Masks on. On guard in quarte.
            #        ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
            """,
            """
            opening: Salute. Masks on. On guard in sixte.
            """);

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
                        "The opening leaves the " + side.word() + " in "
                                + opened.value().map(Position::word).orElse("") + ", but 'start' says "
                                + start.value().map(Position::word).orElse("") + ".",
                        "Name the same guard in both.");
                return;
            }
        }
    }
}
