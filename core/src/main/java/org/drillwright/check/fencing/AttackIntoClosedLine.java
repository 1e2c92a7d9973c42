package org.drillwright.check.fencing;

import java.util.Optional;
import org.drillwright.check.Fault;
import org.drillwright.check.RefusalRule;
import org.drillwright.check.RuleText;
import org.drillwright.check.Sentence;
import org.drillwright.check.Subject;
import org.drillwright.check.Ways;
import org.drillwright.notation.Aim;
import org.drillwright.notation.Position;
import org.drillwright.phrase.Change;
import org.drillwright.phrase.Refusal;
import org.drillwright.source.Severity;

/** An attack goes where the blade does not stand. */
public final class AttackIntoClosedLine extends RefusalRule {

    public AttackIntoClosedLine() {
        super(new RuleText(
                "attack-into-closed-line",
                Severity.ERROR,
                false,
                "An attack goes to a line that the partner's blade does not close.",
                "A thrust into a closed line is stopped by the blade waiting there, and teaches fencers to run"
                        + " on to it (Waite 1880, p. 19-20, 57).",
                """
                        steps:
                          - leader: Extend to the high outside line and lunge.
                        #           ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
                            follower: Parry sixte.
                            distance: lunge
                            safety: Arrive softly and let the blade bend.
                          - leader: Recover on guard in sixte.
                            follower: Return to guard in sixte.
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
                            distance: lunge
                        """));
    }

    @Override
    protected Optional<Sentence> say(Fault fault, Subject subject) {
        if (!(fault.refusal() instanceof Refusal.ClosedLine closed)) {
            return Sentence.none();
        }
        String by = closed.guard()
                .map(Position::word)
                .map(position -> "the " + fault.by().other().word() + " is in " + position + ", which closes it")
                .orElse("the " + fault.by().other().word() + "'s blade is in contact there and closes it");
        Ways ways = fault.ways();
        closed.open().forEach(line -> ways.or(Sentence.the(line), Change.at(Aim.at(line))));
        return Sentence.error(
                "This goes to " + Sentence.the(closed.line()) + ", but " + by + ".", ways.sentence("Aim for "));
    }
}
