package org.drillwright.check.fencing;

import java.util.Optional;
import java.util.stream.Stream;
import org.drillwright.check.Closers;
import org.drillwright.check.Fault;
import org.drillwright.check.RefusalRule;
import org.drillwright.check.RuleText;
import org.drillwright.check.Sentence;
import org.drillwright.check.Subject;
import org.drillwright.check.WayOut;
import org.drillwright.check.WaysOut;
import org.drillwright.notation.Action;
import org.drillwright.notation.Aim;
import org.drillwright.notation.Position;
import org.drillwright.phrase.Amendment;
import org.drillwright.phrase.Refusal;
import org.drillwright.phrase.Setting;
import org.drillwright.source.Severity;
import org.drillwright.terms.Terms;
import org.drillwright.wording.Message;

/** What is done to the partner's blade finds it there. */
public final class BladeNotThere extends RefusalRule {

    public BladeNotThere() {
        super(new RuleText(BladeNotThere.class, "blade-not-there", Severity.ERROR, false));
    }

    @Override
    protected Optional<Sentence> say(Fault fault, Subject subject) {
        Refusal refusal = fault.refusal();
        if (refusal instanceof Refusal.NoBladeToTake none) {
            return Sentence.error(
                    Message.of(
                            BladeNotThere.class,
                            "blade-not-there.apart."
                                    + none.contact().map(BladeNotThere::key).orElse("glide")),
                    fault.ways()
                            .or(
                                    Message.of(BladeNotThere.class, "blade-not-there.engage-first"),
                                    Amendment.before(on(Action.Contact.ENGAGE, Optional.empty())))
                            .sentence());
        }
        if (refusal instanceof Refusal.NoEngagementToChange) {
            return Sentence.error(
                    Message.of(BladeNotThere.class, "blade-not-there.no-engagement"),
                    fault.ways()
                            .or(
                                    Message.of(
                                            BladeNotThere.class,
                                            "blade-not-there.write-engage",
                                            subject.typed(BladeNotThere.class, "typed.engage")),
                                    Amendment.each(BladeNotThere::engaged))
                            .or(
                                    Message.of(BladeNotThere.class, "blade-not-there.engage-first"),
                                    Amendment.before(on(Action.Contact.ENGAGE, Optional.empty())))
                            .sentence());
        }
        if (refusal instanceof Refusal.ChangesToItself same) {
            return Sentence.error(
                    Message.of(BladeNotThere.class, "blade-not-there.already", Terms.of(same.position())),
                    where(
                            "change-to",
                            Action.Contact.CHANGE_ENGAGEMENT,
                            subject.replay().setting(),
                            fault));
        }
        if (refusal instanceof Refusal.BeatsElsewhere beat) {
            return Sentence.error(
                    Message.of(
                            BladeNotThere.class,
                            "blade-not-there.beat-elsewhere",
                            Terms.of(beat.at()),
                            Terms.of(beat.blade())),
                    where("beat-in", Action.Contact.BEAT, subject.replay().setting(), fault));
        }
        if (refusal instanceof Refusal.FromTheOtherSide other) {
            return Sentence.warning(
                    Message.of(
                            BladeNotThere.class,
                            "blade-not-there.other-side."
                                    + (other.contact() == Action.Contact.PRESS ? "press" : "beat"),
                            Terms.of(other.blade()),
                            Terms.of(other.at())),
                    fault.ways()
                            .or(
                                    Message.of(
                                            BladeNotThere.class, "blade-not-there.change-first", Terms.of(other.at())),
                                    Amendment.before(on(Action.Contact.CHANGE_ENGAGEMENT, Optional.of(other.at()))))
                            .sentence());
        }
        return refusal instanceof Refusal.NothingToCedeTo
                ? Sentence.error(
                        Message.of(BladeNotThere.class, "blade-not-there.nothing-to-cede", Terms.of(fault.by())),
                        fault.ways()
                                .or(
                                        Message.of(BladeNotThere.class, "blade-not-there.leave-ceding"),
                                        Amendment.parriedAs(Action.ParryKind.UNSTATED),
                                        Amendment.without(action -> action.isReply(Action.Reply.YIELD)))
                                .or(
                                        Message.of(BladeNotThere.class, "blade-not-there.press-or-bind"),
                                        Amendment.partnerFirst(on(Action.Contact.PRESS, Optional.empty())),
                                        Amendment.partnerFirst(on(Action.Contact.BIND, Optional.empty())))
                                .sentence())
                : Sentence.none();
    }

    private static Action on(Action.Contact contact, Optional<Position> position) {
        return new Action.OnBlade(contact, position, Aim.UNSTATED);
    }

    private static Action engaged(Action action) {
        return action instanceof Action.OnBlade change
                ? new Action.OnBlade(Action.Contact.ENGAGE, change.position(), change.aim())
                : action;
    }

    /** The positions in which it may be done instead. */
    private static WayOut where(String key, Action.Contact contact, Setting setting, Fault fault) {
        WaysOut ways = fault.ways();
        Stream.of(Position.values())
                .filter(position -> Closers.isUsual(setting, position))
                .forEach(position -> ways.or(
                        Terms.of(position),
                        Amendment.each(
                                action -> action instanceof Action.OnBlade onBlade && onBlade.contact() == contact
                                        ? new Action.OnBlade(contact, Optional.of(position), onBlade.aim())
                                        : action)));
        return ways.sentence(positions -> Message.of(BladeNotThere.class, "blade-not-there." + key, positions));
    }

    private static String key(Action.Contact contact) {
        return switch (contact) {
            case PRESS -> "press";
            case BIND -> "bind";
            case CROISE -> "croise";
            case ENVELOP -> "envelop";
            default -> "take";
        };
    }
}
