package org.drillwright.phrase;

import java.util.Optional;
import org.drillwright.model.Side;
import org.drillwright.notation.Action;
import org.drillwright.notation.Clause;
import org.drillwright.notation.Measure;
import org.drillwright.notation.Position;
import org.drillwright.notation.Stance;
import org.drillwright.notation.Utterance;
import org.drillwright.phrase.told.StartWords;
import org.drillwright.phrase.told.StartWords.Part;
import org.drillwright.wording.Message;

/** The state in which the first count begins: what the opening leads to, with the measure and the contact of start. */
final class StartState {

    private static final Message WHERE = Where.START;

    private final Setting setting;
    private final StartWords words;

    StartState(Setting setting, Utterance words) {
        this.setting = setting;
        this.words = new StartWords(words);
    }

    State from(State opened) {
        State state = opened.with(Range.UNKNOWN).withEngagement(Fact.unknown(WHERE));
        for (Side side : Side.values()) {
            state = state.with(side, placed(state.of(side), side));
        }
        for (Clause clause : words.clauses()) {
            state = StartWords.isWhole(clause) ? stated(state, clause) : state;
        }
        return words.isRead() ? state : doubted(state);
    }

    private State doubted(State stated) {
        State state = InDoubt.masksPerhapsOn(stated, WHERE);
        for (Side side : Side.values()) {
            state = doubted(state, side);
        }
        if (words.leavesOpen(Part.CONTACT)) {
            state = state.withEngagement(Fact.unknown(WHERE));
        }
        return words.leavesOpen(Part.MEASURE) ? state.with(Range.UNKNOWN) : state;
    }

    private State doubted(State stated, Side side) {
        State state = stated;
        if (words.leavesOpen(Part.HAND, side)) {
            state = state.with(side, state.of(side).handUnknown(WHERE))
                    .withAttackOn(side.other(), Fact.unknown(WHERE))
                    .withParried(Fact.unknown(WHERE))
                    .withChange(Optional.of(new State.Change(side, Fact.unknown(WHERE))));
        } else if (words.mayTellMore()) {
            state = state.with(side, state.of(side).armUnknown(WHERE));
        }
        return words.leavesOpen(Part.FEET, side)
                ? state.with(side, state.of(side).withFeet(Fact.unknown(WHERE)))
                : state;
    }

    private Fencer placed(Fencer fencer, Side side) {
        Optional<Position> guard = setting.guardOf(side);
        boolean guards = guard.isPresent()
                || words.clauses().stream()
                        .anyMatch(clause ->
                                StartWords.isCertain(clause, Part.FEET) && clause.action() instanceof Action.OnGuard);
        if (!guards) {
            return fencer;
        }
        Fact<Position> hand = guard.map(Fact::of).orElse(fencer.hand());
        return fencer.guarding(hand).withFeet(Fact.of(Feet.ON_GUARD));
    }

    private State stated(State state, Clause clause) {
        if (clause.action() instanceof Action.State stated) {
            State next = stated.measure().map(Range::of).map(state::with).orElse(state);
            return contact(next, stated.stance(), clause.subject());
        }
        if (clause.action() instanceof Action.Withdraw) {
            return state.with(Range.of(Measure.OUT)).apart();
        }
        return StartWords.stance(clause.action())
                .map(stance -> contact(state, stance, clause.subject()))
                .orElse(state);
    }

    private State contact(State state, Stance stance, Optional<Side> subject) {
        if (stance.engaged().isEmpty()) {
            return state;
        }
        if (!stance.engaged().get()) {
            return state.apart();
        }
        Side owner = subject.orElse(Side.LEADER);
        return stance.engagement()
                .or(() -> setting.guardOf(owner))
                .flatMap(position -> setting.contact(owner, position, Optional.empty()))
                .map(state::engaged)
                .orElseGet(() -> state.withEngagement(Fact.unknown(WHERE)));
    }
}
