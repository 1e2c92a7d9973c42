package org.drillwright.check.fencing;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.drillwright.check.Fault;
import org.drillwright.check.RefusalRule;
import org.drillwright.check.RuleText;
import org.drillwright.check.Sentence;
import org.drillwright.check.Subject;
import org.drillwright.check.WayOut;
import org.drillwright.check.WaysOut;
import org.drillwright.notation.Action;
import org.drillwright.notation.Aim;
import org.drillwright.notation.Measure;
import org.drillwright.notation.Stance;
import org.drillwright.phrase.Amendment;
import org.drillwright.phrase.Refusal;
import org.drillwright.source.Severity;
import org.drillwright.terms.Terms;
import org.drillwright.wording.Message;

/** A touch is made within the measure. */
public final class TooFarOrTooNear extends RefusalRule {

    public TooFarOrTooNear() {
        super(new RuleText(TooFarOrTooNear.class, "too-far-or-too-near", Severity.ERROR, true));
    }

    @Override
    protected Optional<Sentence> say(Fault fault, Subject subject) {
        if (fault.refusal() instanceof Refusal.OutOfReach reach) {
            Message measure = reach.measure().words();
            Message what = reach.lunges()
                    ? Message.of(TooFarOrTooNear.class, "too-far-or-too-near.lunges", measure)
                    : Message.of(TooFarOrTooNear.class, "too-far-or-too-near.made", measure);
            return Sentence.error(what, nearer(fault, subject));
        }
        if (fault.refusal() instanceof Refusal.LungeTooClose) {
            return Sentence.warning(
                    Message.of(TooFarOrTooNear.class, "too-far-or-too-near.close"),
                    fault.ways()
                            .or(
                                    Message.of(TooFarOrTooNear.class, "too-far-or-too-near.leave-lunge"),
                                    Amendment.without(Action.Lunge.class::isInstance))
                            .sentence());
        }
        if (fault.refusal() instanceof Refusal.NoRoom) {
            return Sentence.error(
                    Message.of(
                            TooFarOrTooNear.class,
                            "too-far-or-too-near.no-room",
                            Terms.of(fault.by().other())),
                    fault.ways()
                            .or(
                                    Message.of(TooFarOrTooNear.class, "too-far-or-too-near.leave-steps"),
                                    Amendment.without(Action.Step.class::isInstance))
                            .or(
                                    Message.of(TooFarOrTooNear.class, "too-far-or-too-near.leave-lunge"),
                                    Amendment.without(Action.Lunge.class::isInstance))
                            .or(
                                    Message.of(
                                            TooFarOrTooNear.class,
                                            "too-far-or-too-near.let-back",
                                            Terms.of(fault.by().other())),
                                    Amendment.partnerFirst(new Action.Step(Action.Foot.RETREAT, 1)))
                            .sentence());
        }
        if (fault.refusal() instanceof Refusal.RunsOn) {
            return Sentence.error(
                    Message.of(TooFarOrTooNear.class, "too-far-or-too-near.runs-on", Terms.of(fault.by())),
                    fault.ways()
                            .or(
                                    Message.of(TooFarOrTooNear.class, "too-far-or-too-near.leave-step"),
                                    Amendment.without(Action.Step.class::isInstance))
                            .or(
                                    Message.of(TooFarOrTooNear.class, "too-far-or-too-near.parry-step"),
                                    Amendment.parries(Amendment::also))
                            .sentence());
        }
        return Sentence.none();
    }

    /** The step that is lacking, of the one who is too far away or of the other; or a start from nearer. */
    private static WayOut nearer(Fault fault, Subject subject) {
        Action lunge = new Action.Lunge(Action.Depth.FULL, Aim.UNSTATED);
        Action advance = new Action.Step(Action.Foot.ADVANCE, 1);
        Action recover = new Action.Recover(Action.Way.FORWARD, Stance.UNSTATED);
        Predicate<Action> away =
                action -> action instanceof Action.Step step && step.foot().halfSteps() < 0;
        boolean takes = fault.before().attackOn(fault.by()).isPresent();
        WaysOut ways = fault.ways();
        if (takes) {
            ways.or(Message.of(TooFarOrTooNear.class, "too-far-or-too-near.not-back"), Amendment.without(away))
                    .or(
                            Message.of(
                                    TooFarOrTooNear.class,
                                    "too-far-or-too-near.let-lunge",
                                    Terms.of(fault.by().other())),
                            Amendment.partnerAlso(lunge));
        } else {
            ways.or(Message.of(TooFarOrTooNear.class, "too-far-or-too-near.add-lunge"), Amendment.with(lunge))
                    .or(
                            Message.of(TooFarOrTooNear.class, "too-far-or-too-near.advance-first"),
                            Amendment.before(advance))
                    .or(
                            Message.of(TooFarOrTooNear.class, "too-far-or-too-near.recover-first"),
                            (words, spot) -> Amendment.with(lunge)
                                    .made(Amendment.before(recover).made(words, spot), spot))
                    .or(
                            Message.of(
                                    TooFarOrTooNear.class,
                                    "too-far-or-too-near.let-stay",
                                    Terms.of(fault.by().other())),
                            Amendment.partnerWithout(away));
        }
        Map<Message, Amendment> starts = new LinkedHashMap<>();
        for (int steps = subject.replay().start().measure().least() - 1; steps >= 0; steps--) {
            Measure measure = Measure.of(steps);
            starts.put(
                    Message.of(TooFarOrTooNear.class, "too-far-or-too-near.begin", Terms.of(measure)),
                    Amendment.begunAt(measure));
        }
        return ways.orFirst(starts).sentence();
    }
}
