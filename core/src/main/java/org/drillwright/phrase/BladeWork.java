package org.drillwright.phrase;

import java.util.Optional;
import org.drillwright.model.Side;
import org.drillwright.notation.Action;
import org.drillwright.notation.Aim;
import org.drillwright.notation.Height;
import org.drillwright.notation.Line;
import org.drillwright.notation.Position;

/** Plays what is done to the partner's blade, and lines opened on purpose. */
final class BladeWork {

    private final Setting setting;
    private final Moment moment;
    private final Objections ledger;

    BladeWork(Setting setting, Moment moment, Objections ledger) {
        this.setting = setting;
        this.moment = moment;
        this.ledger = ledger;
    }

    State play(State state, Action.OnBlade onBlade) {
        Side by = moment.by();
        Side other = moment.other();
        if (setting.partner()) {
            new BladeJudge(state, setting, by, ledger).judge(onBlade);
        }
        return switch (onBlade.contact()) {
            // A blade that is beaten comes back to where it was (Warford 1884, p. 18-19), and so it can be passed.
            case BEAT, FROISSEMENT ->
                moved(state, onBlade)
                        .with(other, state.of(other).idle().withReach())
                        .apart();
            case PRESS ->
                pressed(moved(state, onBlade).with(other, state.of(other).idle()));
            case BIND, CROISE, ENVELOP ->
                bound(state.with(other, state.of(other).idle()), onBlade);
            case ENGAGE -> engage(outOfLine(state), onBlade.position());
            case CHANGE_ENGAGEMENT -> change(state, onBlade.position());
            case ABSENCE ->
                state.with(by, state.of(by).open(moment.where())).apart().forgetParryBy(by);
            case PRESS_BACK -> state.with(by, reaching(state.of(by)));
        };
    }

    /** A point in line that is engaged is carried to where the blades touch. */
    private State outOfLine(State state) {
        Fencer partner = state.of(moment.other());
        return partner.extended().is(true) ? state.with(moment.other(), partner.idle()) : state;
    }

    /** A press answered: the blade comes back to where it stood. */
    private static Fencer reaching(Fencer fencer) {
        boolean stood = fencer.hand().isKnown() && fencer.extended().is(false);
        return stood ? fencer.guarding(fencer.hand()).withReach() : fencer.withReach();
    }

    /** The hand goes where the words say that it is done. */
    private State moved(State state, Action.OnBlade onBlade) {
        return onBlade.position()
                .map(position -> state.with(moment.by(), state.of(moment.by()).guarding(Fact.of(position))))
                .orElse(state);
    }

    /** A press is felt and given up again; the blade is met by it, and not taken. */
    private State pressed(State state) {
        return state.withEngagement(state.engagement()
                .map(blades ->
                        blades.map(one -> new Engagement(one.leader(), one.follower(), Optional.of(moment.by())))));
    }

    private State held(State state) {
        return state.withEngagement(state.engagement().map(blades -> blades.map(one -> one.takenBy(moment.by()))));
    }

    /** Blades that touch are carried to the position or the line that is named; what is named may be where they are. */
    private State bound(State state, Action.OnBlade onBlade) {
        Side by = moment.by();
        Optional<Line> here = state.engagement().value().flatMap(known -> known).map(one -> one.lineOf(by));
        if (here.isEmpty()) {
            return state;
        }
        Optional<Position> to =
                onBlade.position().filter(one -> !setting.lineOf(one).equals(here));
        Optional<Engagement> there = to.flatMap(one -> setting.contact(by, one, Optional.of(by)))
                .or(() -> line(onBlade.aim())
                        .map(line -> Engagement.of(by, setting.across(line), line, Optional.of(by))));
        State carried = to.map(one ->
                        state.with(by, state.of(by).guarding(Fact.of(one))).ripostesFrom(by, one))
                .orElse(state);
        return there.map(contact -> carried.engaged(contact.takenBy(by))).orElseGet(() -> held(carried));
    }

    /** The line of the partner to which a blade is carried, where the words name one. */
    private Optional<Line> line(Aim aim) {
        return setting.isSabre()
                ? Optional.empty()
                : aim.height().flatMap(high -> aim.width().map(wide -> Line.of(high, wide)));
    }

    private State engage(State state, Optional<Position> named) {
        Side by = moment.by();
        Optional<Position> position = named.or(() -> state.of(by).hand().value());
        State next = named.map(one ->
                        state.with(by, state.of(by).guarding(Fact.of(one))).ripostesFrom(by, one))
                .orElse(state);
        State known = position.flatMap(one -> setting.contact(by, one, Optional.of(by)))
                .map(next::engaged)
                .orElseGet(() -> next.withEngagement(Fact.unknown(moment.where())));
        return known.withChange(Optional.of(new State.Change(by, state.engagement())));
    }

    private State change(State state, Optional<Position> named) {
        return engage(state, named.or(() -> otherSide(state)));
    }

    /** Where a change leads that names no engagement: to the other side of the contact, whoever took it last. */
    private Optional<Position> otherSide(State state) {
        Side by = moment.by();
        Optional<Position> hand = state.of(by).hand().value();
        Optional<Line> here = state.engagement().value().flatMap(known -> known).map(one -> one.lineOf(by));
        boolean elsewhere = here.isPresent() && !hand.flatMap(setting::lineOf).equals(here);
        return elsewhere
                ? setting.parries().closing(Mirror.otherSide(here.get())).stream()
                        .reduce((first, last) -> last)
                : hand.flatMap(BladeWork::lateral);
    }

    private static Optional<Position> lateral(Position position) {
        return switch (position) {
            case SIXTE, TIERCE -> Optional.of(Position.QUARTE);
            case QUARTE -> Optional.of(Position.SIXTE);
            case OCTAVE, SECONDE -> Optional.of(Position.SEPTIME);
            case SEPTIME -> Optional.of(Position.OCTAVE);
            case PRIME, QUINTE -> Optional.empty();
        };
    }

    State invite(State state, Action.Invite invite) {
        Side by = moment.by();
        Fencer fencer = state.of(by);
        boolean staysPut = invite.position().isPresent();
        Fencer open = staysPut
                ? fencer.guarding(Fact.of(invite.position().get()))
                : isOpen(fencer, invite.aim()) ? fencer.bent() : fencer.open(moment.where());
        return state.with(by, open).forgetParryBy(by);
    }

    /** Whether what is shown is above a low line that is closed, or below a high one. */
    private boolean isOfOtherHeight(Line closed, Aim shown) {
        Optional<Height> height =
                setting.isSabre() ? Optional.empty() : shown.target().flatMap(Sighting::heightOf);
        return height.filter(one -> closed.height().filter(one.other()::equals).isPresent())
                .isPresent();
    }

    /** Whether the hand, as it is held, leaves open the side that is to be shown, so that it need not go anywhere. */
    private boolean isOpen(Fencer fencer, Aim shown) {
        boolean wide = shown.width().isPresent();
        return fencer.covers().is(true)
                && fencer.hand()
                        .value()
                        .flatMap(setting::lineOf)
                        .filter(closed -> (wide && !Aim.at(closed).agreesWith(shown)) || isOfOtherHeight(closed, shown))
                        .isPresent();
    }
}
