package org.drillwright.check.fencing;

import org.drillwright.check.Intent;
import org.drillwright.check.Rule;
import org.drillwright.check.RuleText;
import org.drillwright.check.Subject;
import org.drillwright.notation.Action;
import org.drillwright.source.Findings;
import org.drillwright.source.Severity;
import org.drillwright.source.Written;
import org.drillwright.wording.Message;

/** A blade is taken with the forte upon the foible, never the other way about. */
public final class FoibleAgainstForte implements Rule {

    private static final RuleText TEXT =
            new RuleText(FoibleAgainstForte.class, "foible-against-forte", Severity.ERROR, false);

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public void judge(Subject subject, Findings findings) {
        for (Subject.Place turn : subject.turns()) {
            Written words = subject.turnWords(turn.step(), turn.side());
            Intent.asides(subject.turn(turn.step(), turn.side()), Action.Trifle.FOIBLE_ON_FORTE)
                    .forEach(clause -> findings.error(
                            TEXT.id(),
                            words.span(clause.span()),
                            Message.of(FoibleAgainstForte.class, "foible-against-forte.what"),
                            Message.of(FoibleAgainstForte.class, "foible-against-forte.way")));
        }
    }
}
