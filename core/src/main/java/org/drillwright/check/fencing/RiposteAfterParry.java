package org.drillwright.check.fencing;

import java.util.Optional;
import org.drillwright.check.Fault;
import org.drillwright.check.RefusalRule;
import org.drillwright.check.RuleText;
import org.drillwright.check.Sentence;
import org.drillwright.check.Subject;
import org.drillwright.notation.Action;
import org.drillwright.phrase.Attempt;
import org.drillwright.phrase.Move;
import org.drillwright.phrase.Refusal;
import org.drillwright.source.Severity;

/** A riposte follows one's own parry. */
public final class RiposteAfterParry extends RefusalRule {

    public RiposteAfterParry() {
        super(new RuleText(
                "riposte-after-parry",
                Severity.ERROR,
                false,
                "A riposte follows one's own parry; a counter-riposte follows the parry of a riposte.",
                "That is what the word means (Technical Rules t.9.1); a riposte without it is an attack into an"
                        + " attack.",
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
        Attempt attempt = fault.attempt();
        return none.counter()
                ? Sentence.error(
                        "A counter-riposte follows the parry of a riposte, and the "
                                + fault.by().word() + " has parried none.",
                        "Parry the riposte first; what follows the parry of an attack is a riposte.")
                : Sentence.error(
                        "The " + fault.by().word() + " has not parried, so this is no riposte.",
                        fault.wouldPlay(move -> attempt.playsBy(move, Action.Role.ATTACK, path(move)))
                                ? "Parry first, or call it an attack."
                                : "Parry first.");
    }

    private static Action.Path path(Move move) {
        return move.action() instanceof Action.Strike strike ? strike.path() : Action.Path.UNSTATED;
    }
}
