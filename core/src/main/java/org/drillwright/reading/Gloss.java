package org.drillwright.reading;

import java.util.Optional;
import java.util.Set;
import org.drillwright.notation.Action;
import org.drillwright.notation.Action.Contact;
import org.drillwright.notation.Action.Foot;
import org.drillwright.notation.Action.Parry;
import org.drillwright.notation.Action.ParryKind;
import org.drillwright.notation.Action.Path;
import org.drillwright.notation.Action.Role;
import org.drillwright.notation.Action.Way;
import org.drillwright.notation.Aim;
import org.drillwright.notation.Position;
import org.drillwright.notation.Stance;
import org.drillwright.notation.Width;

/** One action told twice: first by its name, then by how it is done ("Parry: carry the hand to quarte"). */
final class Gloss {

    /** The ways that deceive a blade. */
    private static final Set<Path> DECEIVING =
            Set.of(Path.DISENGAGE, Path.COUNTER_DISENGAGE, Path.DOUBLE, Path.ONE_TWO, Path.CUT_OVER);

    /** What is done again behind what one has done oneself, and answers nothing. */
    private static final Set<Role> RENEWING = Set.of(Role.REMISE, Role.REDOUBLE, Role.REPRISE);

    private Gloss() {}

    /** The one action that both tell of; empty if they are two. */
    static Optional<Action> of(Action name, Action how) {
        if (name instanceof Action.Strike before && how instanceof Action.Strike more) {
            return stroke(before, more);
        }
        if (name instanceof Parry parry && parry.position().isEmpty()) {
            return how instanceof Action.Place place
                    ? Optional.of(new Parry(
                            Optional.of(place.position()),
                            parry.kind(),
                            parry.aim(),
                            parry.inTheLunge() || place.inTheLunge()))
                    : parry(parry, how);
        }
        if (name instanceof Action.OnBlade blade && blade.position().isEmpty()) {
            if (how instanceof Action.Place place) {
                return Optional.of(new Action.OnBlade(blade.contact(), Optional.of(place.position()), blade.aim()));
            }
            return how instanceof Action.OnBlade more && more.contact() == blade.contact()
                    ? Optional.of(how)
                    : Optional.<Action>empty();
        }
        if (name instanceof Action.Invite invite && how instanceof Action.Place place) {
            return Optional.of(new Action.Invite(invite.aim(), Optional.of(place.position())));
        }
        if (name instanceof Action.Invite invite && how instanceof Action.Invite more) {
            return invite.aim().isStated()
                    ? Optional.empty()
                    : Optional.of(new Action.Invite(more.aim(), more.position().or(invite::position)));
        }
        if (name instanceof Action.Recover recover) {
            return recover(recover, how);
        }
        if (name instanceof Action.OnGuard guard && how instanceof Action.Place place) {
            return guard(guard, place);
        }
        return name.equals(how) ? Optional.of(name) : Optional.empty();
    }

    /**
     * Two parries of which one tells nothing of itself, or the first not where it is made, are one: 'lower the point in a
     * half-circle and parry octave', 'parry sixte and carry it outside'.
     */
    static Optional<Action> parries(Parry before, Parry more) {
        if (isBare(more)) {
            return Optional.of(before);
        }
        boolean elsewhere = before.position().isPresent() || before.aim().isStated();
        return elsewhere ? Optional.empty() : parry(before, more);
    }

    /** Whether by this an attack that is let come is met, evaded or gone from. */
    static boolean meetsWhatComes(Action action) {
        return action instanceof Parry
                || action instanceof Action.Place
                || action instanceof Action.Evade
                || action instanceof Action.Withdraw
                || (action instanceof Action.Step step && step.foot().halfSteps() < 0)
                || (action instanceof Action.Strike strike && !RENEWING.contains(strike.role()))
                || (action instanceof Action.OnBlade blade && blade.contact() != Contact.ABSENCE);
    }

    /** Whether a parry tells nothing of itself: 'go across to sixte and sweep it aside' is one. */
    static boolean isBare(Action action) {
        return action instanceof Parry parry
                && parry.position().isEmpty()
                && parry.kind() == ParryKind.UNSTATED
                && !parry.aim().isStated();
    }

    /** "Parry quarte and bring his blade back to quarte": where the parry ends the blade is held. */
    static Optional<Action> carried(Parry parry, Action.OnBlade blade) {
        boolean held = blade.contact() == Action.Contact.ENGAGE || blade.contact() == Action.Contact.BIND;
        boolean there = parry.position().isPresent() && parry.position().equals(blade.position());
        return held && there && !blade.aim().isStated() ? Optional.of(parry) : Optional.empty();
    }

    /** 'Recover to guard in quarte and cover the inside': the guard that is named covers that side by itself. */
    static boolean coveredBy(Action before, Action action) {
        boolean covers = action instanceof Parry parry
                && parry.position().isEmpty()
                && parry.kind() == ParryKind.UNSTATED
                && parry.aim().width().isPresent()
                && parry.aim().target().isEmpty();
        return covers
                && stands(before).map(Gloss::side).equals(((Parry) action).aim().width());
    }

    private static Optional<Position> stands(Action action) {
        if (action instanceof Action.Recover recover) {
            return recover.stance().guard();
        }
        if (action instanceof Action.OnGuard guard) {
            return guard.stance().guard();
        }
        if (action instanceof Action.Place place) {
            return Optional.of(place.position());
        }
        return action instanceof Action.OnBlade blade ? blade.position() : Optional.empty();
    }

    private static Width side(Position position) {
        return switch (position) {
            case PRIME, QUARTE, QUINTE, SEPTIME -> Width.INSIDE;
            case SECONDE, TIERCE, SIXTE, OCTAVE -> Width.OUTSIDE;
        };
    }

    /** 'Keep the distance by a retreat', 'step back, keeping the distance': the step tells how it is kept. */
    static Optional<Action> measureKept(Action before, Action action) {
        if (before.isReply(Action.Reply.FOLLOW) && action instanceof Action.Step) {
            return Optional.of(action);
        }
        return before instanceof Action.Step && action.isReply(Action.Reply.FOLLOW)
                ? Optional.of(before)
                : Optional.empty();
    }

    /** 'Deceive quarte by a disengage': what deceives and how it does so are one. */
    static boolean deceivesBy(Action before, Action action) {
        return before instanceof Action.Strike named
                && named.path() == Path.DECEIVE
                && !named.feint()
                && !named.aim().isStated()
                && action instanceof Action.Strike how
                && DECEIVING.contains(how.path())
                && !how.feint();
    }

    /** To come on guard and engage there is to come on guard engaged. */
    static Optional<Action> engaged(Action.OnGuard guard, Action.OnBlade blade) {
        Stance stance = guard.stance();
        boolean elsewhere = stance.guard().isPresent()
                && blade.position().isPresent()
                && !stance.guard().equals(blade.position());
        if (blade.contact() != Action.Contact.ENGAGE
                || blade.aim().isStated()
                || stance.engaged().isPresent()
                || elsewhere) {
            return Optional.empty();
        }
        Optional<Position> position = stance.guard().or(blade::position);
        return Optional.of(new Action.OnGuard(new Stance(position, Optional.of(true), position)));
    }

    /** To recover is to come on guard: both together are one movement. */
    static Optional<Action> recover(Action.Recover recover, Action how) {
        if (recover.stance().isStated()) {
            return Optional.empty();
        }
        if (how instanceof Action.OnGuard guard) {
            return Optional.of(new Action.Recover(recover.way(), guard.stance()));
        }
        if (how instanceof Action.Step step && (step.foot() == Foot.GAIN || step.foot() == Foot.ADVANCE)) {
            return Optional.of(new Action.Recover(Way.FORWARD, recover.stance()));
        }
        if (how instanceof Action.Recover more) {
            Stance stance = more.stance();
            return Optional.of(new Action.Recover(recover.way() == more.way() ? more.way() : recover.way(), stance));
        }
        return Optional.empty();
    }

    /** The arm is stretched but once: "arm out low, point at the thigh"; a riposte by the arm is one riposte. */
    static Optional<Action> extension(Action before, Action more) {
        boolean byTheArm = before instanceof Action.Strike answer
                && (answer.role() == Role.RIPOSTE || answer.role() == Role.COUNTER_RIPOSTE)
                && more instanceof Action.Strike means
                && means.role() == Role.EXTENSION
                && !means.aim().isStated();
        if (byTheArm) {
            return Optional.of(before);
        }
        if (!(before instanceof Action.Strike arm)
                || arm.role() != Role.EXTENSION
                || !(more instanceof Action.Strike point)) {
            return Optional.empty();
        }
        boolean threatens = point.feint()
                && point.role() == Role.ATTACK
                && point.path() == Path.UNSTATED
                && !arm.aim().isStated();
        if (threatens) {
            return Optional.of(point);
        }
        return point.role() == Role.EXTENSION && arm.aim().agreesWith(point.aim())
                ? Optional.of(arm.aimed(point.aim()))
                : Optional.empty();
    }

    /** "On guard, hand in six" is one guard. */
    static Optional<Action> guard(Action.OnGuard guard, Action.Place place) {
        Stance stance = guard.stance();
        return stance.guard().isPresent()
                ? Optional.empty()
                : Optional.of(new Action.OnGuard(
                        new Stance(Optional.of(place.position()), stance.engaged(), stance.engagement())));
    }

    /** "Cede and parry quarte" is a ceding parry; empty if the parry is of another kind. */
    static Optional<Action> ceding(Parry parry) {
        return parry.kind() == ParryKind.UNSTATED || parry.kind() == ParryKind.CEDING
                ? Optional.of(new Parry(parry.position(), ParryKind.CEDING, parry.aim(), parry.inTheLunge()))
                : Optional.empty();
    }

    /** "Run at him, flèche" is one lunge. */
    static Optional<Action> lunge(Action.Lunge before, Action.Lunge more) {
        return before.depth() == more.depth()
                        && !(before.aim().isStated() && more.aim().isStated())
                ? Optional.of(new Action.Lunge(before.depth(), more.aim().completedBy(before.aim())))
                : Optional.empty();
    }

    /** "Offer the blade and allow the beat": who stays, waits, yields or is hit does so but once. */
    static Optional<Action> answer(Action before, Action.Answer more) {
        boolean quits = before instanceof Action.OnBlade blade
                && blade.contact() == Action.Contact.ABSENCE
                && more.reply() == Action.Reply.HOLD
                && more.stance().engaged().isPresent()
                && !more.stance().engaged().get();
        if (quits) {
            return Optional.of(before);
        }
        if (before instanceof Action.OnGuard guard
                && more.reply() == Action.Reply.HOLD
                && more.stance().engaged().isPresent()) {
            return joined(guard.stance(), more.stance()).map(Action.OnGuard::new);
        }
        return before instanceof Action.Answer answer
                        && answer.reply() == more.reply()
                        && !(answer.stance().isStated() && more.stance().isStated())
                ? Optional.of(answer.stance().isStated() ? answer : more)
                : Optional.empty();
    }

    /** "On guard in six, blades engaged" is one stance. */
    static Optional<Action> stance(Action before, Action.State state) {
        if (state.measure().isPresent()) {
            return Optional.empty();
        }
        if (before instanceof Action.OnGuard guard) {
            return joined(guard.stance(), state.stance()).map(Action.OnGuard::new);
        }
        if (before instanceof Action.Recover recover) {
            return joined(recover.stance(), state.stance()).map(both -> new Action.Recover(recover.way(), both));
        }
        if (before instanceof Action.Answer answer && answer.reply() == Action.Reply.HOLD) {
            return joined(answer.stance(), state.stance()).map(both -> new Action.Answer(answer.reply(), both));
        }
        return Optional.empty();
    }

    private static Optional<Stance> joined(Stance one, Stance more) {
        if (one.engaged().isPresent()
                || (one.guard().isPresent()
                        && more.guard().isPresent()
                        && !one.guard().equals(more.guard()))) {
            return Optional.empty();
        }
        Optional<Position> guard = one.guard().or(more::guard);
        boolean engaged = more.engaged().orElse(false);
        return Optional.of(new Stance(guard, more.engaged(), more.engagement().or(() -> guard.filter(in -> engaged))));
    }

    private static Optional<Action> parry(Parry parry, Action how) {
        if (!(how instanceof Parry more)) {
            return Optional.empty();
        }
        ParryKind kind = more.kind() == ParryKind.UNSTATED ? parry.kind() : more.kind();
        boolean differ = parry.kind() != ParryKind.UNSTATED && kind != parry.kind();
        return differ
                ? Optional.empty()
                : Optional.of(new Parry(
                        more.position(),
                        kind,
                        more.aim().completedBy(parry.aim()),
                        parry.inTheLunge() || more.inTheLunge()));
    }

    private static Optional<Action> stroke(Action.Strike before, Action.Strike more) {
        boolean names = more.feint()
                && more.role() == Role.ATTACK
                && more.path() == Path.UNSTATED
                && !more.aim().isStated();
        if (names) {
            return Optional.of(before.asFeint());
        }
        if (more.path() == Path.DECEIVE && DECEIVING.contains(before.path())) {
            return Optional.of(before.aimed(more.aim()));
        }
        boolean aimsOnly = more.path() == Path.UNSTATED && !before.aim().isStated();
        boolean open = before.path() == Path.UNSTATED
                || before.path() == Path.DECEIVE
                || before.path() == more.path()
                || (before.path() == Path.DIRECT && more.path() == Path.GLIDE)
                || aimsOnly
                || more.role() == Role.EXTENSION;
        boolean bare = before.path() == Path.UNSTATED && !before.aim().isStated();
        boolean feintThenStroke = before.feint() && !more.feint() && more.role() != Role.EXTENSION && !bare;
        boolean answers = before.role() == Role.RIPOSTE && more.role() == Role.COUNTER_RIPOSTE;
        boolean plain =
                more.role() == before.role() || more.role() == Role.ATTACK || more.role() == Role.EXTENSION || answers;
        if (!open
                || !plain
                || feintThenStroke
                || (more.feint() && !before.feint())
                || before.role() == Role.EXTENSION) {
            return Optional.empty();
        }
        Path path = more.role() == Role.EXTENSION ? before.path() : more.path();
        return Optional.of(new Action.Strike(
                answers ? more.role() : before.role(),
                path == Path.UNSTATED ? before.path() : path,
                more.aim().completedBy(before.aim()),
                before.cut() || more.cut(),
                before.feint(),
                before.falseAttack(),
                before.opposition() || more.opposition()));
    }

    /** Whether a stroke tells no more than where the point or edge arrives: 'hit the chest', 'cut flank'. */
    static boolean arrives(Action.Strike end) {
        return end.role() == Role.ATTACK
                && !end.feint()
                && !end.falseAttack()
                && (end.path() == Path.DIRECT || end.path() == Path.UNSTATED)
                && end.aim().isStated();
    }

    /** Whether an action carries a stroke on its way to that aim: the lunge, and the arm that is stretched with it. */
    static boolean carries(Action action, Aim aim) {
        return action instanceof Action.Lunge lunge
                ? lunge.aim().agreesWith(aim)
                : action instanceof Action.Strike arm
                        && arm.role() == Role.EXTENSION
                        && !arm.feint()
                        && arm.aim().agreesWith(aim);
    }

    /**
     * The stroke that was begun and arrives so; empty if they are two.
     *
     * @param carried whether a lunge or the arm was told between them: without, the same told again is done again
     */
    static Optional<Action> arriving(Action before, Action.Strike end, boolean carried) {
        boolean arrives = before instanceof Action.Strike begun
                && !begun.feint()
                && !begun.falseAttack()
                && begun.role() != Role.EXTENSION
                && begun.aim().agreesWith(end.aim())
                && (end.path() == Path.DIRECT || DECEIVING.contains(begun.path()) || begun.path() == Path.DECEIVE)
                && (carried || !begun.aim().equals(end.aim()));
        if (!arrives) {
            return Optional.empty();
        }
        Action.Strike begun = (Action.Strike) before;
        Action.Strike whole = begun.at(end.aim().completedBy(begun.aim()));
        return Optional.of(end.cut() ? whole.asCut() : whole);
    }

    /** What a sentence tells that has but a name before it: 'Parry. Carry the hand to quarte'; empty if they are two. */
    static Optional<Action> underTitle(Action name, Action how) {
        boolean stroke = name instanceof Action.Strike strike
                && (strike.path() == Path.UNSTATED || strike.path() == Path.DECEIVE)
                && !strike.aim().isStated()
                && !strike.feint()
                && strike.role() != Role.EXTENSION;
        boolean parry = name instanceof Parry bare && bare.position().isEmpty() && !isBare(how);
        boolean invitation = name instanceof Action.Invite invite
                && invite.position().isEmpty()
                && !invite.aim().isStated()
                && !how.equals(name);
        boolean rising = name instanceof Action.Recover && how instanceof Action.Recover;
        return stroke || parry || invitation || rising ? of(name, how) : extension(name, how);
    }

    /** "One-two: feint high …": the first half of a stroke that was named. */
    static boolean begins(Action name, Action how) {
        return name instanceof Action.Strike named
                && how instanceof Action.Strike first
                && !named.feint()
                && first.feint()
                && (named.path() == Path.ONE_TWO || named.path() == Path.DOUBLE);
    }

    /** "… and disengage low": what ends a stroke that was named and begun; empty if it is another. */
    static Optional<Action> ends(Action name, Action how) {
        boolean ends = how instanceof Action.Strike last
                && !last.feint()
                && last.role() == Role.ATTACK
                && (last.path() == Path.UNSTATED || last.path() == Path.DIRECT || last.path() == Path.DISENGAGE);
        return ends && name instanceof Action.Strike named
                ? Optional.of(named.aimed(((Action.Strike) how).aim().completedBy(named.aim())))
                : Optional.empty();
    }

    /**
     * "Answer: parry quarte …", "Attack: feint high …" and "Take the blade: bind": a word that names no more than the kind
     * of what follows.
     */
    static boolean heads(Action name, Action how) {
        if (name instanceof Action.Strike answer && answer.role() == Role.RIPOSTE) {
            return answer.path() == Path.UNSTATED && !answer.aim().isStated() && how instanceof Parry;
        }
        if (name instanceof Action.Strike attack && attack.role() == Role.ATTACK) {
            boolean bare = attack.path() == Path.UNSTATED && !attack.aim().isStated() && !attack.feint();
            return bare && how instanceof Action.Strike first && first.feint();
        }
        return name instanceof Action.OnBlade taken
                && taken.contact() == Action.Contact.ENGAGE
                && taken.position().isEmpty()
                && !taken.aim().isStated()
                && how instanceof Action.OnBlade more
                && (more.contact() == Action.Contact.BIND
                        || more.contact() == Action.Contact.CROISE
                        || more.contact() == Action.Contact.ENVELOP);
    }

    /** What is done with the hand, done while in the lunge. */
    static Action inTheLunge(Action action) {
        if (action instanceof Parry parry) {
            return new Parry(parry.position(), parry.kind(), parry.aim(), true);
        }
        return action instanceof Action.Place place ? new Action.Place(place.position(), true) : action;
    }
}
