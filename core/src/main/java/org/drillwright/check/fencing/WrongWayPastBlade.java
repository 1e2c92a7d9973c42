package org.drillwright.check.fencing;

import java.util.Optional;
import org.drillwright.check.Fault;
import org.drillwright.check.RefusalRule;
import org.drillwright.check.RuleText;
import org.drillwright.check.Sentence;
import org.drillwright.check.Subject;
import org.drillwright.check.WayOut;
import org.drillwright.check.WaysOut;
import org.drillwright.notation.Action;
import org.drillwright.notation.Aim;
import org.drillwright.phrase.Amendment;
import org.drillwright.phrase.Refusal;
import org.drillwright.source.Severity;
import org.drillwright.terms.Terms;
import org.drillwright.wording.Message;

/** A disengage, a cut-over and their like have a blade to pass and end where their definition says. */
public final class WrongWayPastBlade extends RefusalRule {

    public WrongWayPastBlade() {
        super(new RuleText(WrongWayPastBlade.class, "wrong-way-past-blade", Severity.ERROR, false));
    }

    @Override
    protected boolean restsOnBothTurns() {
        return true;
    }

    @Override
    protected Optional<Sentence> say(Fault fault, Subject subject) {
        Refusal refusal = fault.refusal();
        if (refusal instanceof Refusal.NoBladeToPass none) {
            Action engage = new Action.OnBlade(Action.Contact.ENGAGE, Optional.empty(), Aim.UNSTATED);
            return Sentence.error(
                    Message.of(WrongWayPastBlade.class, "wrong-way-past-blade.no-blade", Terms.of(none.from())),
                    fault.ways()
                            .or(
                                    Message.of(WrongWayPastBlade.class, "wrong-way-past-blade.straight"),
                                    Amendment.along(Action.Path.DIRECT))
                            .or(
                                    Message.of(WrongWayPastBlade.class, "wrong-way-past-blade.engage-first"),
                                    Amendment.before(engage))
                            .sentence());
        }
        if (refusal instanceof Refusal.EndsElsewhere end) {
            return Sentence.error(
                    Message.of(
                            WrongWayPastBlade.class,
                            "wrong-way-past-blade.ends",
                            Terms.of(end.path()),
                            Terms.of(end.from()),
                            Terms.of(end.expected()),
                            Terms.of(end.named())),
                    named(fault.ways()
                            .or(
                                    Message.of(WrongWayPastBlade.class, "wrong-way-past-blade.name-line"),
                                    Amendment.at(Aim.at(end.expected())))));
        }
        if (refusal instanceof Refusal.NotStraight straight) {
            return Sentence.error(
                    Message.of(
                            WrongWayPastBlade.class,
                            "wrong-way-past-blade.not-straight",
                            Terms.of(straight.parry()),
                            Terms.of(straight.expected()),
                            Terms.of(straight.named())),
                    fault.ways()
                            .or(
                                    Message.of(WrongWayPastBlade.class, "wrong-way-past-blade.write-disengage"),
                                    Amendment.along(Action.Path.DISENGAGE))
                            .or(
                                    Message.of(WrongWayPastBlade.class, "wrong-way-past-blade.parry-line"),
                                    Amendment.at(Aim.at(straight.expected())))
                            .sentence());
        }
        if (refusal instanceof Refusal.NothingToCounter) {
            Action change = new Action.OnBlade(Action.Contact.CHANGE_ENGAGEMENT, Optional.empty(), Aim.UNSTATED);
            return Sentence.error(
                    Message.of(WrongWayPastBlade.class, "wrong-way-past-blade.no-change"),
                    named(fault.ways()
                            .or(
                                    Message.of(WrongWayPastBlade.class, "wrong-way-past-blade.change-first"),
                                    Amendment.partnerFirst(change))));
        }
        return Sentence.none();
    }

    /** Or what leads to the line is called by another name. */
    private static WayOut named(WaysOut ways) {
        return ways.or(
                        Message.of(WrongWayPastBlade.class, "wrong-way-past-blade.straight"),
                        Amendment.along(Action.Path.DIRECT))
                .or(
                        Message.of(WrongWayPastBlade.class, "wrong-way-past-blade.disengage"),
                        Amendment.along(Action.Path.DISENGAGE))
                .or(
                        Message.of(WrongWayPastBlade.class, "wrong-way-past-blade.one-two"),
                        Amendment.along(Action.Path.ONE_TWO))
                .or(
                        Message.of(WrongWayPastBlade.class, "wrong-way-past-blade.double"),
                        Amendment.along(Action.Path.DOUBLE))
                .sentence();
    }
}
