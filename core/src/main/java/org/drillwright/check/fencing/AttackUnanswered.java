package org.drillwright.check.fencing;

import java.util.List;
import java.util.Optional;
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
import org.drillwright.phrase.Amendment;
import org.drillwright.phrase.Attack;
import org.drillwright.phrase.Fact;
import org.drillwright.phrase.Refusal;
import org.drillwright.phrase.Where;
import org.drillwright.source.Severity;
import org.drillwright.terms.Terms;
import org.drillwright.wording.Message;

/** Each attack is met: parried, evaded, or received on purpose. */
public final class AttackUnanswered extends RefusalRule {

    private static final Action TAKES = new Action.Answer(Action.Reply.RECEIVE, Stance.UNSTATED);
    private static final Action HOLDS = new Action.Answer(Action.Reply.HOLD, Stance.UNSTATED);

    public AttackUnanswered() {
        super(new RuleText(AttackUnanswered.class, "attack-unanswered", Severity.ERROR, true));
    }

    @Override
    protected Optional<Sentence> say(Fault fault, Subject subject) {
        Refusal refusal = fault.refusal();
        Message by = Terms.of(fault.by());
        if (refusal instanceof Refusal.Unanswered unanswered) {
            Message what = unanswered
                    .line()
                    .value()
                    .map(line -> Message.of(AttackUnanswered.class, "attack-unanswered.unmet.line", by, Terms.of(line)))
                    .orElseGet(() -> Message.of(AttackUnanswered.class, "attack-unanswered.unmet", by));
            return Sentence.error(
                    what,
                    fault.ways()
                            .or(
                                    Message.of(AttackUnanswered.class, "attack-unanswered.parry-it"),
                                    parries(fault, subject))
                            .or(
                                    Message.of(AttackUnanswered.class, "attack-unanswered.evade-it"),
                                    Amendment.also(new Action.Evade(Action.Displacement.UNSTATED)))
                            .or(
                                    Message.of(
                                            AttackUnanswered.class,
                                            "attack-unanswered.write-take",
                                            subject.typed(AttackUnanswered.class, "typed.take")),
                                    Amendment.also(TAKES))
                            .sentence()
                            .and(closers(fault, subject)));
        }
        if (refusal instanceof Refusal.NotOwnedTo hit) {
            Message what = switch (hit.arrival()) {
                case PAST_THE_PARRY -> Message.of(AttackUnanswered.class, "attack-unanswered.past-the-parry", by);
                case STOP_HIT -> Message.of(AttackUnanswered.class, "attack-unanswered.stop-hit", by);
                case POINT_IN_LINE -> Message.of(AttackUnanswered.class, "attack-unanswered.point-in-line", by);
            };
            Action owns = new Action.Aside(Action.Trifle.ACKNOWLEDGE);
            return Sentence.warning(
                    what,
                    fault.ways()
                            .or(Message.of(AttackUnanswered.class, "attack-unanswered.here"), Amendment.also(owns))
                            .or(Message.of(AttackUnanswered.class, "attack-unanswered.next"), Amendment.nearby(1, owns))
                            .told(places -> Message.of(
                                    AttackUnanswered.class,
                                    "attack-unanswered.acknowledge",
                                    Message.or(places),
                                    subject.typed(AttackUnanswered.class, "typed.acknowledge"))));
        }
        if (refusal instanceof Refusal.RetreatTooShort retreat) {
            return Sentence.error(
                    Message.of(
                            AttackUnanswered.class,
                            "attack-unanswered.retreat",
                            retreat.measure().words()),
                    fault.ways()
                            .or(
                                    Message.counted(AttackUnanswered.class, "attack-unanswered.back", retreat.more()),
                                    Amendment.also(new Action.Step(Action.Foot.RETREAT, retreat.more())))
                            .or(Message.of(AttackUnanswered.class, "attack-unanswered.parry"), parries(fault, subject))
                            .sentence());
        }
        if (refusal instanceof Refusal.HoldUnderAttack) {
            return Sentence.warning(
                    Message.of(AttackUnanswered.class, "attack-unanswered.holds", by), takenOnPurpose(fault, subject));
        }
        if (refusal instanceof Refusal.HandDeceived) {
            return Sentence.warning(
                    Message.of(AttackUnanswered.class, "attack-unanswered.hand-deceived", by),
                    takenOnPurpose(fault, subject));
        }
        if (refusal instanceof Refusal.NothingToTake) {
            return Sentence.error(
                    Message.of(AttackUnanswered.class, "attack-unanswered.nothing-to-take", by),
                    fault.ways()
                            .or(
                                    Message.of(
                                            AttackUnanswered.class,
                                            "attack-unanswered.write-touch",
                                            Terms.of(fault.by().other())),
                                    Amendment.partnerTouches(
                                            subject.replay().setting().lines()))
                            .or(
                                    Message.of(AttackUnanswered.class, "attack-unanswered.hold-here"),
                                    Amendment.instead(HOLDS))
                            .sentence());
        }
        return Sentence.none();
    }

    private static WayOut takenOnPurpose(Fault fault, Subject subject) {
        return fault.ways()
                .or(Message.none(), Amendment.also(TAKES))
                .told(takes -> Message.of(
                        AttackUnanswered.class,
                        "attack-unanswered.say-taken",
                        subject.typed(AttackUnanswered.class, "typed.take")));
    }

    private static Fact<Line> line(Fault fault) {
        return fault.before().attackOn(fault.by()).map(Attack::line).orElseGet(() -> Fact.unknown(Where.ATTACK));
    }

    /** The parries that may meet the attack; any, where it is not known where it comes. */
    private static List<Amendment> parries(Fault fault, Subject subject) {
        Action any = new Action.Parry(Optional.empty(), Action.ParryKind.UNSTATED, Aim.UNSTATED, false);
        return line(fault)
                .value()
                .map(line -> Closers.changes(subject.replay().setting(), fault, line))
                .orElseGet(() -> List.of(Amendment.also(any)));
    }

    private static WayOut closers(Fault fault, Subject subject) {
        return line(fault)
                .value()
                .map(line -> Closers.sentence(subject.replay().setting(), fault, line))
                .orElse(WayOut.NONE);
    }
}
