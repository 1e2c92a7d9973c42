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
import org.drillwright.check.Ways;
import org.drillwright.notation.Action;
import org.drillwright.notation.Aim;
import org.drillwright.notation.Position;
import org.drillwright.phrase.Change;
import org.drillwright.phrase.Refusal;
import org.drillwright.phrase.Setting;
import org.drillwright.source.Severity;

/** What is done to the partner's blade finds it there. */
public final class BladeNotThere extends RefusalRule {

    public BladeNotThere() {
        super(new RuleText(
                "blade-not-there",
                Severity.ERROR,
                false,
                "A bind, croisé, envelopment, press or glide begins with the blades in contact or takes the"
                        + " blade of an extended arm; a beat is made at the height of the blade and, if the"
                        + " blades touch, on the side of contact; a change of engagement leaves one engagement"
                        + " for another; a ceding parry gives way to a blade that takes it.",
                "You cannot lead or leave a blade that is not there (L'Abbat 1734, ch. IX, XIX; the ceding"
                        + " parry: common"
                        + " practice, no source).",
                """
                        steps:
                          - leader: Bind the blade to the low outside line and lunge.
                        #           ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
                            follower: Take the touch.
                            distance: lunge
                            safety: Lead the blade, do not strike it.
                          - leader: Recover on guard in sixte.
                            follower: Hold on guard.
                            distance: extension to lunge
                          - leader: Change the engagement to quarte.
                        #           ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
                            follower: Hold on guard.
                            distance: lunge
                          - leader: Beat in septime.
                        #           ^^^^^^^^^^^^^^^
                            follower: Return to guard in sixte.
                            distance: lunge
                          - leader: Extend to the high inside line and lunge.
                            follower: Ceding parry of quarte.
                        #             ^^^^^^^^^^^^^^^^^^^^^^
                            distance: lunge
                            safety: Arrive softly and let the blade bend.
                          - leader: Recover on guard in sixte.
                            follower: Return to guard in sixte.
                            distance: extension to lunge
                        """,
                """
                        start: On guard in quarte, engaged, at lunge distance.
                        opening: Salute. Masks on. On guard in quarte, engaged.
                        steps:
                          - leader: Change the engagement to sixte.
                            follower: Hold on guard.
                            distance: lunge
                          - leader: Change the engagement to quarte.
                            follower: Hold on guard.
                            distance: lunge
                          - leader: Beat in quarte.
                            follower: Return to guard in quarte, engaged.
                            distance: lunge
                          - leader: Bind the blade to the low outside line and lunge.
                            follower: Ceding parry of quarte.
                            distance: lunge
                            safety: Lead the blade, do not strike it.
                          - leader: Recover on guard in quarte, engaged.
                            follower: Return to guard in quarte, engaged.
                            distance: extension to lunge
                        """));
    }

    @Override
    protected Optional<Sentence> say(Fault fault, Subject subject) {
        Refusal refusal = fault.refusal();
        if (refusal instanceof Refusal.NoBladeToTake none) {
            return Sentence.error(
                    "The blades are apart, so there is no blade to "
                            + none.contact().map(BladeNotThere::verb).orElse("glide along") + ".",
                    fault.ways()
                            .or("engage first", Change.before(on(Action.Contact.ENGAGE, Optional.empty())))
                            .sentence());
        }
        if (refusal instanceof Refusal.NoEngagementToChange) {
            return Sentence.error(
                    "The blades are apart, so there is no engagement to change.",
                    fault.ways()
                            .or("write 'engage'", Change.each(BladeNotThere::engaged))
                            .or("engage first", Change.before(on(Action.Contact.ENGAGE, Optional.empty())))
                            .sentence());
        }
        if (refusal instanceof Refusal.ChangesToItself same) {
            return Sentence.error(
                    "The blades are already engaged in " + same.position().word() + ".",
                    where(
                            "change to",
                            Action.Contact.CHANGE_ENGAGEMENT,
                            subject.replay().setting(),
                            fault));
        }
        if (refusal instanceof Refusal.BeatsElsewhere beat) {
            return Sentence.error(
                    "A beat in " + beat.at().word() + " cannot meet the blade, which is in "
                            + Sentence.the(beat.blade()) + ".",
                    where("beat in", Action.Contact.BEAT, subject.replay().setting(), fault));
        }
        if (refusal instanceof Refusal.FromTheOtherSide other) {
            return Sentence.warning(
                    "The blades touch in " + Sentence.the(other.blade()) + ", and the turn does not say how a "
                            + (other.contact() == Action.Contact.PRESS ? "press" : "beat") + " in "
                            + other.at().word() + " gets to the other side of the blade.",
                    fault.ways()
                            .or(
                                    "change the engagement to " + other.at().word() + " first",
                                    Change.before(on(Action.Contact.CHANGE_ENGAGEMENT, Optional.of(other.at()))))
                            .sentence());
        }
        return refusal instanceof Refusal.NothingToCedeTo
                ? Sentence.error(
                        "No blade takes the " + fault.by().word() + "'s blade here, so there is nothing to cede to.",
                        fault.ways()
                                .or(
                                        "leave out 'ceding'",
                                        Change.parriedAs(Action.ParryKind.UNSTATED),
                                        Change.without(action -> action.isReply(Action.Reply.YIELD)))
                                .or(
                                        "begin the attack with a press or a bind",
                                        Change.partnerFirst(on(Action.Contact.PRESS, Optional.empty())),
                                        Change.partnerFirst(on(Action.Contact.BIND, Optional.empty())))
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
    private static WayOut where(String does, Action.Contact contact, Setting setting, Fault fault) {
        Ways ways = fault.ways();
        Stream.of(Position.values())
                .filter(position -> Closers.isUsual(setting, position))
                .forEach(position -> ways.or(
                        position.word(),
                        Change.each(action -> action instanceof Action.OnBlade onBlade && onBlade.contact() == contact
                                ? new Action.OnBlade(contact, Optional.of(position), onBlade.aim())
                                : action)));
        return ways.sentence(Sentence.capital(does, " "));
    }

    private static String verb(Action.Contact contact) {
        return switch (contact) {
            case PRESS -> "press";
            case BIND -> "bind";
            case CROISE -> "take in croisé";
            case ENVELOP -> "envelop";
            default -> "take";
        };
    }
}
