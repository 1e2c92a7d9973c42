package org.drillwright.check.fencing;

import java.util.Optional;
import org.drillwright.check.Fault;
import org.drillwright.check.RefusalRule;
import org.drillwright.check.RuleText;
import org.drillwright.check.Sentence;
import org.drillwright.check.Subject;
import org.drillwright.notation.Action;
import org.drillwright.phrase.Change;
import org.drillwright.phrase.Refusal;
import org.drillwright.source.Severity;

/** A riposte follows one's own parry. */
public final class RiposteWithoutParry extends RefusalRule {

    public RiposteWithoutParry() {
        super(new RuleText(
                "riposte-without-parry",
                Severity.ERROR,
                false,
                "A riposte follows the fencer's own parry; a counter-riposte follows the parry of a riposte.",
                "That is what the word means (Technical Rules t.9.1); a riposte without a parry is an attack"
                        + " into an attack.",
                """
                        steps:
                          - leader: Extend to the high inside line and lunge.
                            follower: Retreat.
                            distance: lunge
                            safety: Arrive softly and let the blade bend.
                          - leader: Hold the lunge and take the touch.
                            follower: Riposte to the high inside line with a lunge.
                        #             ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
                            distance: lunge
                            safety: Stop the point on the jacket.
                          - leader: Recover on guard in sixte.
                            follower: Recover forward on guard in sixte.
                            distance: lunge
                        """,
                """
                        steps:
                          - leader: Extend to the high inside line and lunge.
                            follower: Parry quarte.
                            distance: lunge
                            safety: Arrive softly and let the blade bend.
                          - leader: Hold the lunge and take the touch.
                            follower: Riposte straight to the high inside line.
                            distance: extension
                            safety: Stop the point on the jacket.
                          - leader: Recover on guard in sixte.
                            follower: Return to guard in sixte.
                            distance: lunge
                        """));
    }

    @Override
    protected Optional<Sentence> say(Fault fault, Subject subject) {
        if (!(fault.refusal() instanceof Refusal.NoParryBefore none)) {
            return Sentence.none();
        }
        return none.counter()
                ? Sentence.error(
                        "A counter-riposte follows the parry of a riposte, and the "
                                + fault.by().word() + " has parried none.",
                        fault.ways()
                                .or("parry the riposte first", Change.parries(Change::before))
                                .or(
                                        "parry the riposte on the count before",
                                        Change.parries(parry -> Change.nearby(-1, parry)))
                                .or("call it a riposte", Change.as(Action.Role.RIPOSTE))
                                .or("call it an attack", Change.as(Action.Role.ATTACK))
                                .sentence())
                : Sentence.error(
                        "The " + fault.by().word() + " has not parried, so this is not a riposte.",
                        fault.ways()
                                .or("parry first", Change.parries(Change::before))
                                .or("parry on the count before", Change.parries(parry -> Change.nearby(-1, parry)))
                                .or("call it an attack", Change.as(Action.Role.ATTACK))
                                .sentence());
    }
}
