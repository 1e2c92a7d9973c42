package org.drillwright.phrase;

import java.util.Optional;
import java.util.stream.Stream;
import org.drillwright.model.Side;
import org.drillwright.notation.Action;
import org.drillwright.notation.Measure;
import org.drillwright.notation.Move;

/** Plays one move in a state: pure, never throws for a wrong move. */
final class Play implements Action.Cases<State> {

    private final Setting setting;
    private final Moment moment;
    private final State state;
    private final Objections ledger = new Objections();

    private Play(State state, Setting setting, Moment moment) {
        this.setting = setting;
        this.moment = moment;
        this.state = state;
    }

    static Outcome play(State state, Move move, Setting setting, Moment moment) {
        Play play = new Play(state, setting, moment);
        State next = move.isAssault()
                ? new Assault(setting, moment, play.ledger).play(state, move)
                : move.action().match(play);
        return move.isCertain()
                ? play.ledger.outcome(next)
                : play.ledger.unrefused(new InDoubt(state, move.by(), moment.where()).of(next, move));
    }

    private Footwork footwork() {
        return new Footwork(setting, moment, ledger);
    }

    private Defence defence() {
        return new Defence(setting, moment, ledger);
    }

    @Override
    public State step(Action.Step step) {
        return footwork().step(state, step);
    }

    @Override
    public State lunge(Action.Lunge lunge) {
        return footwork().lunge(state, lunge.depth());
    }

    @Override
    public State recover(Action.Recover recover) {
        return footwork().recover(state, recover);
    }

    @Override
    public State onGuard(Action.OnGuard onGuard) {
        return footwork().onGuard(state, onGuard.stance());
    }

    @Override
    public State withdraw(Action.Withdraw withdraw) {
        return footwork().withdraw(state);
    }

    @Override
    public State stand(Action.Stand stand) {
        return footwork().stand(state);
    }

    @Override
    public State strike(Action.Strike strike) {
        return state;
    }

    @Override
    public State parry(Action.Parry parry) {
        return defence().parry(state, parry);
    }

    @Override
    public State place(Action.Place place) {
        return defence().place(state, place);
    }

    @Override
    public State onBlade(Action.OnBlade onBlade) {
        return new BladeWork(setting, moment, ledger).play(state, onBlade);
    }

    @Override
    public State invite(Action.Invite invite) {
        return new BladeWork(setting, moment, ledger).invite(state, invite);
    }

    @Override
    public State evade(Action.Evade evade) {
        return defence().evade(state);
    }

    @Override
    public State answer(Action.Answer answer) {
        return defence().answer(state, answer);
    }

    @Override
    public State salute(Action.Salute salute) {
        return state;
    }

    @Override
    public State mask(Action.Mask mask) {
        boolean inReach = setting.partner() && state.measure().most() <= Measure.LUNGE.steps();
        if (!mask.on() && inReach) {
            ledger.refuse(new Refusal.MaskOffInReach(state.measure(), isInPlay()));
        }
        return state.with(moment.by(), state.of(moment.by()).withMask(Fact.of(mask.on())));
    }

    private boolean isInPlay() {
        return state.measure().most() <= Measure.EXTENSION.steps()
                || Stream.of(Side.values())
                        .anyMatch(side -> state.of(side).isLunged()
                                || state.of(side).extended().is(true)
                                || state.attackOn(side).filter(Attack::meant).isPresent());
    }

    @Override
    public State state(Action.State stated) {
        State next = stated.measure().map(Range::of).map(state::with).orElse(state);
        if (stated.stance().engaged().isEmpty()) {
            return next;
        }
        if (!stated.stance().engaged().get()) {
            return next.apart();
        }
        return stated.stance()
                .engagement()
                .or(() -> state.of(moment.by()).hand().value())
                .flatMap(position -> setting.contact(moment.by(), position, Optional.empty()))
                .map(next::engaged)
                .orElseGet(() -> next.withEngagement(Fact.unknown(moment.where())));
    }

    @Override
    public State aside(Action.Aside aside) {
        Side by = moment.by();
        return switch (aside.trifle()) {
            case BEND_ARM -> state.with(by, state.of(by).bent());
            case LOWER, MOVED -> state.with(by, state.of(by).open(moment.where()));
            case ACKNOWLEDGE -> defence().acknowledge(state);
            case SWAP, HALT, HANDS_ALIKE, HANDS_OPPOSITE, FOIBLE_ON_FORTE, OTHER -> state;
        };
    }

    /** Words that could not be read make unknown what they could touch. */
    @Override
    public State unread(Action.Unread unread) {
        Side by = moment.by();
        State next = new InDoubt(state, by, moment.where()).acted(state);
        return next.withAttackOn(by, Fact.unknown(moment.where()))
                .with(by, next.of(by).withMask(Fact.unknown(moment.where())));
    }
}
