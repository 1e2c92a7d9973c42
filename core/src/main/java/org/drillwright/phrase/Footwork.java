package org.drillwright.phrase;

import java.util.Optional;
import org.drillwright.model.Side;
import org.drillwright.notation.Action;
import org.drillwright.notation.Measure;
import org.drillwright.notation.Position;
import org.drillwright.notation.Stance;

/** Plays what the feet do, and the guard that is taken up with it. */
final class Footwork {

    private final Setting setting;
    private final Moment moment;
    private final Objections ledger;

    Footwork(Setting setting, Moment moment, Objections ledger) {
        this.setting = setting;
        this.moment = moment;
        this.ledger = ledger;
    }

    State step(State state, Action.Step step) {
        Side by = moment.by();
        boolean sabrePass = setting.isSabre() && step.foot() == Action.Foot.CROSS_FORWARD;
        if (sabrePass) {
            ledger.refuse(new Refusal.RearFootPasses());
        }
        boolean half = step.foot().halfSteps() % 2 != 0;
        int shift = half ? 0 : -step.foot().halfSteps() / 2 * step.times();
        State from = state;
        if (shift > 0 && state.of(by).isLunged() && moment.where().equals(Where.CLOSING)) {
            // Who goes back when the phrase is over comes up first, and nobody says so: common practice, no source.
            from = toGuard(state, Action.Way.BACK, Stance.UNSTATED);
        } else if (shift != 0 && state.of(by).isLunged()) {
            ledger.refuse(new Refusal.NotRecovered(shift < 0 ? Refusal.Onward.GOES_FORWARD : Refusal.Onward.GOES_BACK));
            from = state.with(by, state.of(by).withFeet(Fact.of(Feet.ON_GUARD))).with(Range.UNKNOWN);
        }
        if (step.foot() == Action.Foot.GAIN) {
            // The rear foot brought up to a lunge is the return to guard forward, before a reprise: common practice, no
            // source.
            return state.of(by).isLunged()
                    ? comeUp(state, Action.Way.FORWARD)
                    : from.with(by, from.of(by).withGain());
        }
        return from.with(half ? Range.UNKNOWN : from.measure().shift(shift));
    }

    /** Whether an action is a step away, of any kind, that may take somebody out of reach. */
    static boolean goesBack(Action action) {
        return action instanceof Action.Withdraw
                || (action instanceof Action.Step step && step.foot().halfSteps() < 0);
    }

    /** The lunge's own feet: a foot action nearer, two after the rear foot was brought up. */
    State lunge(State state, Action.Depth depth) {
        Side by = moment.by();
        Fencer fencer = state.of(by);
        if (fencer.isLunged()) {
            ledger.refuse(new Refusal.NotRecovered(Refusal.Onward.LUNGES_AGAIN));
            return state.with(Range.UNKNOWN);
        }
        if (moment.othersLunge()) {
            ledger.refuse(new Refusal.BothLunge());
        }
        if (setting.isSabre() && depth == Action.Depth.FLECHE) {
            ledger.refuse(new Refusal.RearFootPasses());
        }
        Range after = depth == Action.Depth.FULL ? state.measure().shift(fencer.gained() ? -2 : -1) : Range.UNKNOWN;
        Fact<Feet> feet = depth == Action.Depth.FLECHE ? Fact.of(Feet.ON_GUARD) : Fact.of(Feet.LUNGED);
        return state.with(by, fencer.withFeet(feet)).with(after);
    }

    State recover(State state, Action.Recover recover) {
        if (state.of(moment.by()).feet().is(Feet.ON_GUARD)) {
            ledger.refuse(new Refusal.NothingToRecover());
        }
        return toGuard(state, recover.way(), recover.stance());
    }

    State onGuard(State state, Stance stance) {
        return toGuard(state, Action.Way.BACK, stance);
    }

    private State comeUp(State state, Action.Way way) {
        Side by = moment.by();
        Fencer fencer = state.of(by);
        Range after = state.measure();
        if (fencer.isLunged() && way == Action.Way.BACK) {
            after = after.shift(1);
        } else if (!fencer.feet().isKnown()) {
            after = Range.UNKNOWN;
        }
        return state.with(by, fencer.withFeet(Fact.of(Feet.ON_GUARD))).with(after);
    }

    /** On guard, arm bent, in the guard named, else in the guard of the start. */
    private State toGuard(State before, Action.Way way, Stance stance) {
        Side by = moment.by();
        State state = comeUp(before, way);
        Fact<Position> guard = stance.guard()
                .or(() -> setting.guardOf(by))
                .map(Fact::of)
                .orElseGet(() -> Fact.unknown(moment.where()));
        State next = state.with(by, state.of(by).guarding(guard))
                .noAttackOn(moment.other())
                .forgetParryBy(by)
                .withChange(Optional.empty());
        return contact(next, before, stance, guard);
    }

    private State contact(State next, State before, Stance stance, Fact<Position> guard) {
        if (stance.engaged().isPresent()) {
            Optional<Position> position = stance.engagement().or(guard::value);
            return stance.engaged().get() ? engaged(next, position) : next.apart();
        }
        Optional<Engagement> touching = before.engagement().value().flatMap(blades -> blades);
        boolean keeps = setting.engagedAtStart()
                && touching.isPresent()
                && !before.of(moment.by()).isLunged()
                && guard.value().flatMap(setting::lineOf).equals(touching.map(one -> one.lineOf(moment.by())));
        if (keeps) {
            return next.withEngagement(before.engagement());
        }
        if (before.engagement().is(Optional.empty()) || !setting.engagedAtStart()) {
            return next.apart();
        }
        return next.withEngagement(Fact.unknown(moment.where()));
    }

    private State engaged(State state, Optional<Position> position) {
        return position.flatMap(one -> setting.contact(moment.by(), one, Optional.empty()))
                .map(state::engaged)
                .orElseGet(() -> state.withEngagement(Fact.unknown(moment.where())));
    }

    State withdraw(State state) {
        Fencer fencer = state.of(moment.by());
        return state.with(moment.by(), fencer.withFeet(Fact.of(Feet.ON_GUARD)))
                .with(Range.of(Measure.OUT))
                .apart();
    }

    State stand(State state) {
        Fencer fencer = state.of(moment.by()).open(moment.where());
        return state.with(moment.by(), fencer.withFeet(Fact.of(Feet.STANDING))).apart();
    }
}
