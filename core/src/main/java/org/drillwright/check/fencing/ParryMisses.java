package org.drillwright.check.fencing;

import java.util.Optional;
import org.drillwright.check.Closers;
import org.drillwright.check.Fault;
import org.drillwright.check.RefusalRule;
import org.drillwright.check.RuleText;
import org.drillwright.check.Sentence;
import org.drillwright.check.Subject;
import org.drillwright.check.WayOut;
import org.drillwright.check.WaysOut;
import org.drillwright.notation.Action;
import org.drillwright.notation.Action.ParryKind;
import org.drillwright.notation.Aim;
import org.drillwright.notation.Height;
import org.drillwright.notation.Line;
import org.drillwright.notation.Position;
import org.drillwright.notation.Target;
import org.drillwright.phrase.Amendment;
import org.drillwright.phrase.Refusal;
import org.drillwright.phrase.Setting;
import org.drillwright.source.Severity;
import org.drillwright.terms.Terms;
import org.drillwright.wording.Message;

/** A parry ends closing the line that is attacked. */
public final class ParryMisses extends RefusalRule {

    public ParryMisses() {
        super(new RuleText(ParryMisses.class, "parry-misses", Severity.ERROR, false));
    }

    @Override
    protected boolean restsOnBothTurns() {
        return true;
    }

    @Override
    protected Optional<Sentence> say(Fault fault, Subject subject) {
        Setting setting = subject.replay().setting();
        Refusal refusal = fault.refusal();
        if (refusal instanceof Refusal.ParryMisses miss) {
            Position position = miss.position();
            Message what = Message.of(
                    ParryMisses.class,
                    "parry-misses.closes",
                    Terms.of(position),
                    closed(setting, position),
                    Terms.of(miss.attacked()));
            WayOut out = Closers.sentence(setting, fault, miss.attacked());
            return miss.firm()
                    ? Sentence.error(what, out)
                    : Sentence.warning(what.then(Message.of(ParryMisses.class, "parry-misses.differ")), out);
        }
        if (refusal instanceof Refusal.CircleElsewhere circle) {
            return Sentence.error(
                    Message.of(
                            ParryMisses.class,
                            "parry-misses.circle-elsewhere",
                            Terms.of(circle.position()),
                            Terms.of(circle.from())),
                    Closers.sentence(setting, fault, circle.attacked()));
        }
        if (refusal instanceof Refusal.CircleNotNeeded circle) {
            return Sentence.error(
                    Message.of(
                            ParryMisses.class,
                            "parry-misses.circle-not-needed",
                            Terms.of(circle.attacked()),
                            Terms.of(circle.position())),
                    fault.ways()
                            .or(
                                    Message.of(ParryMisses.class, "parry-misses.leave-circle"),
                                    Amendment.parriedAs(ParryKind.UNSTATED))
                            .sentence()
                            .and(Closers.sentence(setting, fault, circle.attacked())));
        }
        if (refusal instanceof Refusal.ParryAtOtherHeight other) {
            boolean low = other.attacked() == Height.LOW;
            return Sentence.error(
                    Message.of(
                            ParryMisses.class,
                            low ? "parry-misses.low" : "parry-misses.high",
                            Terms.of(other.position()),
                            closed(setting, other.position())),
                    atHeight(setting, fault, other.attacked()));
        }
        return sayWarning(setting, fault, subject);
    }

    /** Parries at the height of the attack, or an arm that is hit while the target is drawn away. */
    private static WayOut atHeight(Setting setting, Fault fault, Height height) {
        WaysOut ways = fault.ways();
        for (Position position : Position.values()) {
            boolean there = setting.lineOf(position)
                    .flatMap(Line::height)
                    .filter(height::equals)
                    .isPresent();
            if (there && Closers.isUsual(setting, position)) {
                ways.or(
                        Message.of(ParryMisses.class, "parry-misses.parry", Terms.of(position)),
                        Amendment.instead(
                                new Action.Parry(Optional.of(position), ParryKind.UNSTATED, Aim.UNSTATED, false)));
            }
        }
        Aim arm = new Aim(Optional.empty(), Optional.empty(), Optional.of(Target.FOREARM));
        Action stop = new Action.Strike(Action.Role.STOP, Action.Path.UNSTATED, arm, false, false, false, false);
        return ways.or(
                        Message.of(ParryMisses.class, "parry-misses.draw-away"),
                        Amendment.instead(new Action.Evade(Action.Displacement.UNSTATED), stop))
                .sentence();
    }

    private static Optional<Sentence> sayWarning(Setting setting, Fault fault, Subject subject) {
        Refusal refusal = fault.refusal();
        if (refusal instanceof Refusal.CircleWanted circle) {
            return Sentence.warning(
                    Message.of(
                            ParryMisses.class,
                            "parry-misses.circle-wanted",
                            Terms.of(circle.position()),
                            Terms.of(circle.attacked())),
                    fault.ways()
                            .or(
                                    Message.of(
                                            ParryMisses.class,
                                            "parry-misses.write-circular",
                                            subject.typed(
                                                    ParryMisses.class, "typed.circular", Terms.of(circle.position()))),
                                    Amendment.parriedAs(ParryKind.CIRCULAR))
                            .sentence());
        }
        if (refusal instanceof Refusal.KindDiffers kind) {
            return Sentence.warning(
                    Message.of(
                            ParryMisses.class,
                            "parry-misses.kind",
                            Terms.of(kind.from()),
                            Terms.of(kind.to()),
                            Terms.of(kind.is()),
                            Terms.of(kind.called())),
                    fault.ways()
                            .or(
                                    Message.of(ParryMisses.class, "parry-misses.leave-kind"),
                                    Amendment.parriedAs(ParryKind.UNSTATED))
                            .or(
                                    Message.of(ParryMisses.class, "parry-misses.right-name"),
                                    Amendment.parriedAs(kind.is()))
                            .sentence());
        }
        if (refusal instanceof Refusal.NothingToParry) {
            return Sentence.warning(
                    Message.of(ParryMisses.class, "parry-misses.nothing"), metOrMoved(setting, fault, subject));
        }
        return Sentence.none();
    }

    /** An attack that the parry meets, or a hand that only goes there. */
    private static WayOut metOrMoved(Setting setting, Fault fault, Subject subject) {
        return fault.ways()
                .or(
                        Message.of(
                                ParryMisses.class,
                                "parry-misses.write-attack",
                                Terms.of(fault.by().other())),
                        Amendment.partnerTouches(setting.lines()))
                .or(
                        Message.of(
                                ParryMisses.class,
                                "parry-misses.write-move",
                                subject.typed(ParryMisses.class, "typed.move"),
                                subject.typed(ParryMisses.class, "typed.parry")),
                        Amendment.each(ParryMisses::moved))
                .sentence();
    }

    private static Action moved(Action action) {
        return action instanceof Action.Parry parry && parry.position().isPresent()
                ? new Action.Place(parry.position().get(), parry.inTheLunge())
                : action;
    }

    /** The lines that a position closes. */
    private static Message closed(Setting setting, Position position) {
        return Message.or(setting.parries().row(position).lines().stream()
                .sorted()
                .map(Terms::of)
                .toList());
    }
}
