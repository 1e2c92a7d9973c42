package org.drillwright.phrase;

import java.util.List;
import java.util.Optional;
import org.drillwright.model.Side;
import org.drillwright.notation.Action;
import org.drillwright.notation.Action.Path;
import org.drillwright.notation.Action.Role;
import org.drillwright.notation.Aim;
import org.drillwright.notation.Line;
import org.drillwright.notation.Move;
import org.drillwright.notation.Position;
import org.drillwright.notation.Target;

/** Plays a move that sends a point or an edge at the partner, with the feet that carry it. */
final class Assault {

    private final Setting setting;
    private final Moment moment;
    private final Objections ledger;

    Assault(Setting setting, Moment moment, Objections ledger) {
        this.setting = setting;
        this.moment = moment;
        this.ledger = ledger;
    }

    State play(State state, Move move) {
        Footwork feet = new Footwork(setting, moment, ledger);
        State set = state;
        for (Action.Step step : move.steps()) {
            set = feet.step(set, step);
        }
        Optional<Action.Strike> strike = move.strike().or(() -> carried(state, move));
        boolean wasLunged = set.of(moment.by()).isLunged();
        Range before = set.measure();
        if (move.lunge().isPresent()) {
            set = feet.lunge(set, move.lunge().get().depth());
        }
        if (strike.isEmpty()) {
            return mayCarry(state) ? set.withAttackOn(moment.other(), Fact.unknown(moment.where())) : set;
        }
        if (moment.footFirst() && move.lunge().isEmpty()) {
            ledger.refuse(new Refusal.FootBeforeHand());
        }
        return strike(state, set, strike.get(), move.lunge().isPresent(), wasLunged, before);
    }

    /** A lunge behind an arm that is out already, or with an aim of its own, carries a stroke. */
    private Optional<Action.Strike> carried(State state, Move move) {
        Aim aim = move.lunge().map(Action.Lunge::aim).orElse(Aim.UNSTATED);
        boolean out = state.of(moment.by()).extended().is(true);
        if (!setting.partner() || !(out || aim.isStated())) {
            return Optional.empty();
        }
        return Optional.of(Action.Strike.attack(aim));
    }

    /** Whether the arm that lunges may be out already. */
    private boolean mayCarry(State state) {
        Fact<Boolean> out = state.of(moment.by()).extended();
        return setting.partner() && !ledger.asks("arm", out.isKnown(), out.since());
    }

    private State strike(
            State before, State set, Action.Strike strike, boolean lunges, boolean wasLunged, Range standing) {
        Sighting sighting = new Sighting(before, setting, moment.by(), strike);
        if (!setting.partner()) {
            return set.with(moment.by(), set.of(moment.by()).threatening(sighting.line()));
        }
        boolean aimsAtMark = strike.aim().target().equals(Optional.of(Target.MARK));
        if (aimsAtMark) {
            return set.with(moment.by(), set.of(moment.by()).bent());
        }
        sighting.offTarget().ifPresent(target -> ledger.refuse(new Refusal.OffTarget(target)));
        judgeMask(before, strike);
        judgeRight(before, strike);
        judgeRenewal(strike);
        new PathJudge(before, setting, moment.by(), strike, ledger).judge();
        Fact<Line> line = sighting.line();
        if (!sighting.isBeyondTable()) {
            boolean bare = strike.role() == Role.EXTENSION && !strike.feint() && !lunges;
            judgeLine(before, strike, line, bare ? touches(set.measure(), sighting.reach()) : Fact.of(true));
        }
        if (sighting.reachesAnArmThatIsOut()) {
            Fact<Boolean> out = before.of(moment.other()).extended();
            ledger.asks("arm", out.isKnown(), out.since());
        }
        // Who stands out of distance is out of a lunge's reach with the arm, too.
        int reach = standing.isOut() ? 0 : sighting.reach();
        State near =
                touchesFromHowEverFar(strike, lunges) ? set.with(set.measure().within(reach)) : set;
        boolean meant = judgeReach(near, strike, reach, lunges, wasLunged, standing);
        return after(before, near, strike, line, meant, sighting);
    }

    /** Whether a stroke says that it touches, so that who was out of distance before was not too far away for it. */
    private static boolean touchesFromHowEverFar(Action.Strike strike, boolean lunges) {
        return !isBare(strike, lunges) && !strike.feint() && !strike.falseAttack();
    }

    /** Only an arm that goes out, or a blade that goes round another: out of reach it threatens. */
    private static boolean isBare(Action.Strike strike, boolean lunges) {
        return !lunges && (strike.role() == Role.EXTENSION || goesRound(strike));
    }

    private void judgeMask(State before, Action.Strike strike) {
        Fact<Boolean> masked = before.of(moment.other()).masked();
        if (ledger.asks("mask", masked.isKnown(), masked.since()) && masked.is(false)) {
            ledger.refuse(new Refusal.Unmasked(moment.other(), strike.cut()));
        }
    }

    /** A riposte follows one's own parry; a counter-riposte the parry of a riposte. */
    private void judgeRight(State before, Action.Strike strike) {
        boolean counter = strike.role() == Role.COUNTER_RIPOSTE;
        if (strike.role() != Role.RIPOSTE && !counter) {
            return;
        }
        Fact<Optional<Parried>> parried = before.parried();
        if (!ledger.asks("parry", parried.isKnown(), parried.since())) {
            return;
        }
        boolean right = parried.value()
                .flatMap(known -> known)
                .filter(one -> one.by() == moment.by())
                .filter(one -> !counter || one.against() == Role.RIPOSTE || one.against() == Role.COUNTER_RIPOSTE)
                .isPresent();
        boolean goesOn = before.attackOn(moment.other())
                .filter(own -> own.role() == strike.role() && !own.meant())
                .isPresent();
        boolean drew = parried.value()
                .flatMap(known -> known)
                .filter(one -> one.by() != moment.by() && one.feint() && one.against() == strike.role())
                .isPresent();
        if (!right && !goesOn && !drew) {
            ledger.refuse(new Refusal.NoParryBefore(counter));
        }
    }

    /** Remise, redoublement and reprise renew an attack of one's own (Technical Rules t.13). */
    private void judgeRenewal(Action.Strike strike) {
        boolean renews = switch (strike.role()) {
            case REMISE, REDOUBLE, REPRISE -> true;
            default -> false;
        };
        Fact<Boolean> attacked = moment.attacked();
        if (renews && ledger.asks("earlier attack", attacked.isKnown(), attacked.since()) && attacked.is(false)) {
            ledger.refuse(new Refusal.NothingToRenew(strike.role()));
        }
    }

    /**
     * What means to touch finds its line open. An arm that goes out from out of reach only threatens (the point in line,
     * Technical Rules t.84.1), or is shown to be parried or beaten: it may stand before a blade.
     */
    private void judgeLine(State before, Action.Strike strike, Fact<Line> line, Fact<Boolean> touches) {
        Side other = moment.other();
        boolean bareExtension = strike.role() == Role.EXTENSION && !strike.aim().isStated();
        if (bareExtension || isMereChange(strike)) {
            return;
        }
        boolean said = ledger.asks("line", line.isKnown() || offTarget(strike), line.since());
        boolean compound = strike.path() == Path.ONE_TWO || strike.path() == Path.DOUBLE;
        boolean single = !before.of(moment.by()).extended().is(true);
        if (!said || line.value().isEmpty() || (compound && single)) {
            return;
        }
        ClosedLines lines = new ClosedLines(before, setting, other);
        Fact<Position> hand = before.of(other).hand();
        if (!ledger.asks("guard", lines.isKnown(), hand.since())) {
            return;
        }
        Optional<Optional<Position>> closing = lines.closing(line.value().get(), strike);
        List<Line> open = lines.open(strike);
        closing.filter(guard -> ledger.asks("distance", touches.isKnown(), touches.since()))
                .filter(guard -> touches.is(true))
                .ifPresent(guard ->
                        ledger.refuse(new Refusal.ClosedLine(line.value().orElse(Line.HEAD), guard, open)));
    }

    /** Whether an arm that only goes out is near enough to touch. */
    private static Fact<Boolean> touches(Range measure, int reach) {
        boolean away = measure.least() > reach;
        return away || measure.most() <= reach ? Fact.of(!away) : Fact.unknown(Fact.HERE);
    }

    private static boolean offTarget(Action.Strike strike) {
        return strike.aim().target().map(Target::isBelowTheHip).orElse(false);
    }

    /** Whether the stroke means to touch; if so, whether it can. */
    private boolean judgeReach(
            State set, Action.Strike strike, int reach, boolean lunges, boolean wasLunged, Range standing) {
        Range measure = set.measure();
        boolean bare = isBare(strike, lunges);
        if (strike.feint() || (bare && measure.least() > reach)) {
            return false;
        }
        if (bare && !measure.isKnown()) {
            return ledger.asks("distance", false, Fact.HERE);
        }
        if (lunges && wasLunged) {
            return true;
        }
        boolean certain = measure.least() > reach;
        boolean known = certain || measure.most() <= reach;
        if (strike.falseAttack()) {
            return known && !certain;
        }
        boolean begins = strike.role().stops() || strike.role() == Role.ATTACK;
        if (certain && !lunges && begins && mayGoOn()) {
            return false;
        }
        if (ledger.asks("distance", known, Fact.HERE) && certain) {
            ledger.refuse(new Refusal.OutOfReach(measure, lunges, wasLunged));
            return true;
        }
        boolean riposte = strike.role() == Role.RIPOSTE || strike.role() == Role.COUNTER_RIPOSTE;
        if (riposte && lunges && standing.most() <= 0) {
            ledger.refuse(new Refusal.LungeTooClose());
        }
        return true;
    }

    /**
     * A stroke whose lunge comes on the next count only threatens on this one: the arm goes out before the foot (Technical Rules
     * t.101.3), and a stop is begun on the partner's step (Waite 1880, p. 68).
     */
    private boolean mayGoOn() {
        Fact<Boolean> lunges = moment.lungesNext();
        return !ledger.asks("lunge", lunges.isKnown(), lunges.since()) || lunges.is(true);
    }

    /** A blade that only goes round another, to nowhere that is said. */
    private static boolean isMereChange(Action.Strike strike) {
        return goesRound(strike) && !strike.aim().isStated();
    }

    /** A blade that goes round another; from out of reach and without a lunge it only threatens. */
    private static boolean goesRound(Action.Strike strike) {
        boolean round = strike.path() == Path.DISENGAGE
                || strike.path() == Path.DECEIVE
                || strike.path() == Path.CUT_OVER
                || strike.path() == Path.COUNTER_DISENGAGE;
        return round && strike.role() == Role.ATTACK;
    }

    private State after(
            State before, State set, Action.Strike strike, Fact<Line> line, boolean meant, Sighting sighting) {
        Side by = moment.by();
        boolean compound = (strike.path() == Path.ONE_TWO || strike.path() == Path.DOUBLE)
                && !before.of(by).extended().is(true);
        Optional<Fact<Line>> shown = compound ? Optional.of(shown(sighting)) : Optional.empty();
        boolean contact = strike.opposition() || strike.path() == Path.GLIDE || holdsContact(before);
        Attack attack = new Attack(
                line,
                sighting.height(),
                shown,
                strike.role(),
                meant,
                strike.feint(),
                contact,
                false,
                sighting.isBeyondTable(),
                sighting.reach());
        boolean stops = strike.role().stops();
        State next = set.with(by, set.of(by).threatening(line))
                .withAttackOn(moment.other(), Fact.of(Optional.of(attack)))
                .forgetParryBy(by);
        if (strike.path() == Path.DISENGAGE
                || strike.path() == Path.CUT_OVER
                || strike.path() == Path.COUNTER_DISENGAGE) {
            next = next.apart();
        }
        if (strike.role() == Role.RIPOSTE || strike.role() == Role.COUNTER_RIPOSTE) {
            next = next.with(moment.other(), met(next.of(moment.other())));
        }
        return stops ? next.noAttackOn(by) : next;
    }

    /** A riposte shows that the blades did meet: what was parried closes nothing. */
    private static Fencer met(Fencer fencer) {
        return fencer.extended().is(true) ? fencer.idle() : fencer;
    }

    private boolean holdsContact(State before) {
        return before.engagement()
                .value()
                .flatMap(blades -> blades)
                .flatMap(Engagement::holder)
                .filter(moment.by()::equals)
                .isPresent();
    }

    /** The line that the first movement of a compound attack shows. */
    private static Fact<Line> shown(Sighting sighting) {
        Fact<Line> from = sighting.from();
        return from.value().map(line -> Fact.of(Mirror.otherSide(line))).orElse(from);
    }
}
