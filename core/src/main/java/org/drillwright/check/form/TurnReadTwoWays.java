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
            RuleText.of(TurnReadTwoWays.class, "turn-read-two-ways", Severity.WARNING, false, """
            steps:
              - leader: Swat the blade, disengage and lunge.
            #           ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
                follower: Take the touch.
                distance: lunge
                safety: Arrive softly and let the blade bend.
            """, """
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
