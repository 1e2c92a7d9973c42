package org.drillwright.check.fencing;

import java.util.Optional;
import org.drillwright.check.Fault;
import org.drillwright.check.RefusalRule;
import org.drillwright.check.RuleText;
import org.drillwright.check.Sentence;
import org.drillwright.check.Subject;
import org.drillwright.check.WayOut;
import org.drillwright.check.Ways;
import org.drillwright.notation.Action;
import org.drillwright.notation.Aim;
import org.drillwright.phrase.Change;
import org.drillwright.phrase.Refusal;
import org.drillwright.source.Severity;

/** A disengage, a cut-over and their like have a blade to pass and end where their definition says. */
public final class WrongWayPastBlade extends RefusalRule {

    public WrongWayPastBlade() {
        super(new RuleText(
                "wrong-way-past-blade",
                Severity.ERROR,
                false,
                "A disengage, cut-over or counter-disengage has a blade to pass and ends on the other side of"
                        + " it; a straight riposte passes no blade.",
                "Only an action made on the blade deserves the name (L'Abbat XII; Technical Rules t.11).",
                """
                        start: On guard in octave, blades apart, at lunge distance.
                        opening: Salute. Masks on. On guard in octave.
                        steps:
                          - leader: Move the hand to sixte.
                            follower: Hold on guard in octave.
                            distance: lunge
                          - leader: Disengage to the high inside line and lunge.
                        #           ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
                            follower: Parry quarte.
                            distance: lunge
                            safety: Arrive softly and let the blade bend.
                          - leader: Recover on guard in octave.
                            follower: Return to guard in octave.
                            distance: lunge
                        """,
                """
                        start: On guard in sixte, engaged, at lunge distance.
                        steps:
                          - leader: Disengage to the high inside line and lunge.
                            follower: Parry quarte.
                            distance: lunge
                            safety: Arrive softly and let the blade bend.
                          - leader: Recover on guard in sixte, engaged.
                            follower: Return to guard in sixte, engaged.
                            distance: lunge
                        """));
    }

    @Override
    protected Optional<Sentence> say(Fault fault, Subject subject) {
        Refusal refusal = fault.refusal();
        if (refusal instanceof Refusal.NoBladeToPass none) {
            Action engage = new Action.OnBlade(Action.Contact.ENGAGE, Optional.empty(), Aim.UNSTATED);
            return Sentence.error(
                    "There is no blade to pass: the blades are apart and the partner's is not in "
                            + Sentence.the(none.from()) + ", in front of the point.",
                    fault.ways()
                            .or("call it a straight thrust", Change.along(Action.Path.DIRECT))
                            .or("engage first", Change.before(engage))
                            .sentence());
        }
        if (refusal instanceof Refusal.EndsElsewhere end) {
            return Sentence.error(
                    "A " + Sentence.path(end.path()) + " from " + Sentence.the(end.from()) + " ends in "
                            + Sentence.the(end.expected()) + ", not in " + Sentence.the(end.named()) + ".",
                    named(fault.ways().or("name the line it ends in", Change.at(Aim.at(end.expected())))));
        }
        if (refusal instanceof Refusal.NotStraight straight) {
            return Sentence.error(
                    "A straight riposte from " + straight.parry().word() + " goes to "
                            + Sentence.the(straight.expected()) + "; to " + Sentence.the(straight.named())
                            + " it has to pass the blade.",
                    fault.ways()
                            .or("write 'riposte by disengage'", Change.along(Action.Path.DISENGAGE))
                            .or("name the line of the parry", Change.at(Aim.at(straight.expected())))
                            .sentence());
        }
        if (refusal instanceof Refusal.NothingToCounter) {
            Action change = new Action.OnBlade(Action.Contact.CHANGE_ENGAGEMENT, Optional.empty(), Aim.UNSTATED);
            return Sentence.error(
                    "There is no change of engagement here to deceive; a counter-disengage follows the partner's blade"
                            + " round.",
                    named(fault.ways()
                            .or("have the partner change the engagement first", Change.partnerFirst(change))));
        }
        return Sentence.none();
    }

    /** Or what leads to the line is called by another name. */
    private static WayOut named(Ways ways) {
        return ways.or("call it a straight thrust", Change.along(Action.Path.DIRECT))
                .or("call it a disengage", Change.along(Action.Path.DISENGAGE))
                .or("call it a one-two", Change.along(Action.Path.ONE_TWO))
                .or("call it a double", Change.along(Action.Path.DOUBLE))
                .sentence();
    }
}
