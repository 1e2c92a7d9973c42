package org.drillwright.check.fencing;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.drillwright.check.Closers;
import org.drillwright.check.Fault;
import org.drillwright.check.RefusalRule;
import org.drillwright.check.RuleText;
import org.drillwright.check.Sentence;
import org.drillwright.check.Subject;
import org.drillwright.check.WayOut;
import org.drillwright.notation.Action;
import org.drillwright.notation.Aim;
import org.drillwright.notation.Line;
import org.drillwright.notation.Stance;
import org.drillwright.phrase.Attack;
import org.drillwright.phrase.Change;
import org.drillwright.phrase.Fact;
import org.drillwright.phrase.Refusal;
import org.drillwright.phrase.Where;
import org.drillwright.source.Severity;
import org.drillwright.wording.Message;

/** Each attack is met: parried, evaded, or received on purpose. */
public final class AttackUnanswered extends RefusalRule {

    private static final Action TAKES = new Action.Answer(Action.Reply.RECEIVE, Stance.UNSTATED);
    private static final Action HOLDS = new Action.Answer(Action.Reply.HOLD, Stance.UNSTATED);

    public AttackUnanswered() {
        super(new RuleText(
                "attack-unanswered",
                Severity.ERROR,
                true,
                "Every attack is parried, evaded, or received on purpose ('take the touch') on the same count;"
                        + " an attacker who is stopped may take the touch on the next count. Nobody takes a"
                        + " touch that does not come.",
                "A fencer who does not know that a touch is coming is hit unprepared.",
                """
                        steps:
                          - leader: Extend to the high inside line and lunge.
                            follower: Bend the arm.
                        #             ^^^^^^^^^^^^^
                            distance: lunge
                            safety: Arrive softly and let the blade bend.
                          - leader: Recover on guard in sixte.
                            follower: Return to guard in sixte.
                            distance: lunge
                          - leader: Hold on guard.
                            follower: Take the touch.
                        #             ^^^^^^^^^^^^^^
                            distance: lunge
                        """,
                """
                        steps:
                          - leader: Extend to the high inside line and lunge.
                            follower: Take the touch.
                            distance: lunge
                            safety: Arrive softly and let the blade bend.
                          - leader: Recover on guard in sixte.
                            follower: Return to guard in sixte.
                            distance: lunge
                        """));
    }

    @Override
    protected Optional<Sentence> say(Fault fault, Subject subject) {
        Refusal refusal = fault.refusal();
        if (refusal instanceof Refusal.Unanswered unanswered) {
            String line = unanswered
                    .line()
                    .value()
                    .map(one -> " in " + Sentence.the(one))
                    .orElse("");
            return Sentence.error(
                    "The attack" + line + " is not met by the " + fault.by().word() + ".",
                    fault.ways()
                            .or("parry it", parries(fault, subject))
                            .or("evade it", Change.also(new Action.Evade(Action.Displacement.UNSTATED)))
                            .or("write 'take the touch'", Change.also(TAKES))
                            .sentence()
                            .and(closers(fault, subject)));
        }
        if (refusal instanceof Refusal.NotOwnedTo hit) {
            String comes = switch (hit.arrival()) {
                case PAST_THE_PARRY -> "The attack gets past the parry";
                case STOP_HIT -> "A stop hit arrives";
                case POINT_IN_LINE -> "The step runs on to the point in line";
            };
            Action owns = new Action.Aside(Action.Trifle.ACKNOWLEDGE);
            return Sentence.warning(
                    comes + ", and the " + fault.by().word() + " does not acknowledge it.",
                    fault.ways()
                            .or("here", Change.also(owns))
                            .or("on the next count", Change.nearby(1, owns))
                            .told(places -> Message.plain("If it is meant to land, write 'acknowledge the touch' "
                                    + places.stream().map(Message::english).collect(Collectors.joining(" or "))
                                    + ".")));
        }
        if (refusal instanceof Refusal.RetreatTooShort retreat) {
            String back = retreat.more() == 1 ? "go back one more step" : "go back " + retreat.more() + " more steps";
            return Sentence.error(
                    "This retreat does not get out of reach: it ends at "
                            + retreat.measure().words() + ".",
                    fault.ways()
                            .or(back, Change.also(new Action.Step(Action.Foot.RETREAT, retreat.more())))
                            .or("parry", parries(fault, subject))
                            .sentence());
        }
        if (refusal instanceof Refusal.HoldUnderAttack) {
            return Sentence.warning(
                    "An attack is on its way, and the " + fault.by().word() + " only holds.", takenOnPurpose(fault));
        }
        if (refusal instanceof Refusal.HandDeceived) {
            return Sentence.warning(
                    "The riposte goes round the " + fault.by().word() + "'s hand and arrives.", takenOnPurpose(fault));
        }
        if (refusal instanceof Refusal.NothingToTake) {
            return Sentence.error(
                    "No touch comes to the " + fault.by().word() + " here or on the count before.",
                    fault.ways()
                            .or(
                                    "write a touch into the "
                                            + fault.by().other().word() + "'s turn",
                                    Change.partnerTouches(
                                            subject.replay().setting().lines()))
                            .or("hold here", Change.instead(HOLDS))
                            .sentence());
        }
        return Sentence.none();
    }

    private static WayOut takenOnPurpose(Fault fault) {
        return fault.ways()
                .or("take it", Change.also(TAKES))
                .told(takes -> Message.plain("If the touch is taken on purpose, say so: 'take the touch'."));
    }

    private static Fact<Line> line(Fault fault) {
        return fault.before().attackOn(fault.by()).map(Attack::line).orElseGet(() -> Fact.unknown(Where.ATTACK));
    }

    /** The parries that may meet the attack; any, where it is not known where it comes. */
    private static List<Change> parries(Fault fault, Subject subject) {
        Action any = new Action.Parry(Optional.empty(), Action.ParryKind.UNSTATED, Aim.UNSTATED, false);
        return line(fault)
                .value()
                .map(line -> Closers.changes(subject.replay().setting(), fault, line))
                .orElseGet(() -> List.of(Change.also(any)));
    }

    private static WayOut closers(Fault fault, Subject subject) {
        return line(fault)
                .value()
                .map(line -> Closers.sentence(subject.replay().setting(), fault, line))
                .orElse(WayOut.NONE);
    }
}
