package org.drillwright.check.form;

import org.drillwright.check.Rule;
import org.drillwright.check.RuleText;
import org.drillwright.check.Subject;
import org.drillwright.notation.TwoReadings;
import org.drillwright.source.Findings;
import org.drillwright.source.Severity;
import org.drillwright.source.Written;
import org.drillwright.wording.Message;

/** No turn can be read two ways. */
public final class TurnReadTwoWays implements Rule {

    private static final RuleText TEXT =
            new RuleText(TurnReadTwoWays.class, "turn-read-two-ways", Severity.WARNING, false);

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public void judge(Subject subject, Findings findings) {
        for (Subject.Place turn : subject.turns()) {
            Written words = subject.turnWords(turn.step(), turn.side());
            for (TwoReadings open : subject.turn(turn.step(), turn.side()).readings()) {
                findings.warning(
                        TEXT.id(),
                        words.span(open.span()),
                        Message.of(TurnReadTwoWays.class, "turn-read-two-ways.what", open.one(), open.other()),
                        Message.of(TurnReadTwoWays.class, "turn-read-two-ways.way", open.one()));
            }
        }
    }
}
