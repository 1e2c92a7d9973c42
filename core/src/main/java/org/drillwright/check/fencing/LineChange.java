package org.drillwright.check.fencing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drillwright.check.Fault;
import org.drillwright.check.RefusalRule;
import org.drillwright.check.RuleText;
import org.drillwright.check.Sentence;
import org.drillwright.check.Subject;
import org.drillwright.notation.Action;
import org.drillwright.notation.Aim;
import org.drillwright.phrase.Attempt;
import org.drillwright.phrase.Refusal;
import org.drillwright.source.Severity;

/** A disengage, a cut-over and their like have a blade to pass and end where their definition says. */
public final class LineChange extends RefusalRule {

    public LineChange() {
        super(new RuleText(
                "line-change",
                Severity.ERROR,
                false,
                "A disengage, cut-over or counter-disengage has a blade to pass and ends on the other side of it; a"
                        + " straight riposte does not pass it.",
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
        Attempt attempt = fault.attempt();
        if (refusal instanceof Refusal.NoBladeToPass none) {
            return Sentence.error(
                    "There is no blade to pass: the blades are apart and the partner's does not stand in "
                            + Sentence.the(none.from()) + ", before the point.",
                    waysToPass(fault));
        }
        if (refusal instanceof Refusal.EndsElsewhere end) {
            return Sentence.error(
                    "A " + Sentence.path(end.path()) + " from " + Sentence.the(end.from()) + " ends in "
                            + Sentence.the(end.expected()) + ", not in " + Sentence.the(end.named()) + ".",
                    fault.wouldPlay(move -> attempt.playsAt(move, end.expected()))
                            ? "Name the line it ends in, or the action that leads to this one."
                            : "Name the action that leads to this line.");
        }
        if (refusal instanceof Refusal.NotStraight straight) {
            return Sentence.error(
                    "A straight riposte from " + straight.parry().word() + " goes to "
                            + Sentence.the(straight.expected()) + "; to " + Sentence.the(straight.named())
                            + " it has to pass the blade.",
                    ways(fault, attempt, straight));
        }
        if (refusal instanceof Refusal.NothingToCounter) {
            return Sentence.error(
                    "There is no change of engagement here to deceive.",
                    "A counter-disengage follows the partner's blade round; let the partner change the engagement first.");
        }
        return Sentence.none();
    }

    private static String waysToPass(Fault fault) {
        Attempt attempt = fault.attempt();
        Action engage = new Action.OnBlade(Action.Contact.ENGAGE, Optional.empty(), Aim.UNSTATED);
        boolean straight = fault.wouldPlay(move -> attempt.playsBy(move, Action.Role.ATTACK, Action.Path.DIRECT));
        boolean engages = fault.wouldPlay(move -> attempt.playsAfter(fault.by(), engage, move));
        if (straight) {
            return "A thrust that passes nothing is a straight thrust" + (engages ? "; or engage first." : ".");
        }
        return engages ? "Engage first." : "";
    }

    private static String ways(Fault fault, Attempt attempt, Refusal.NotStraight straight) {
        boolean disengages = fault.wouldPlay(move -> move.action() instanceof Action.Strike strike
                && attempt.playsBy(move, strike.role(), Action.Path.DISENGAGE));
        boolean stays = fault.wouldPlay(move -> attempt.playsAt(move, straight.expected()));
        List<String> ways = new ArrayList<>();
        if (disengages) {
            ways.add("write 'riposte by disengage'");
        }
        if (stays) {
            ways.add("name the line of the parry");
        }
        return Sentence.capital(String.join(", or ", ways), ".");
    }
}
