package org.drillwright.phrase;

import java.util.Optional;
import org.drillwright.model.Side;
import org.drillwright.notation.Action;
import org.drillwright.notation.Clause;
import org.drillwright.notation.Doubt;
import org.drillwright.notation.Move;
import org.drillwright.wording.Message;

/** Makes unknown what unread words leave open about a move that was played. */
final class InDoubt {

    private final State before;
    private final Side by;
    private final Message where;

    /** @param before the state in which the move began */
    InDoubt(State before, Side by, Message where) {
        this.before = before;
        this.by = by;
        this.where = where;
    }

    /** Of masks that are off it is not known, where words that may put them on were not read. */
    static State masksPerhapsOn(State state, Message where) {
        State next = state;
        for (Side side : Side.values()) {
            if (next.of(side).masked().is(false)) {
                next = next.with(side, next.of(side).withMask(Fact.unknown(where)));
            }
        }
        return next;
    }

    /** What is left of the state that the move led to. */
    State of(State after, Move move) {
        State state = after;
        for (Clause part : move.parts()) {
            for (Doubt doubt : part.doubts()) {
                state = switch (doubt) {
                    case DONE -> masked(acted(state, by), by);
                    case WHO -> masked(acted(masked(acted(state, by), by.other()), by.other()), by);
                    case CHOICE -> touched(acted(state, by), Part.of(part.action()));
                    case MANNER -> touched(state, Part.of(part.action()));
                    case STEPS -> touched(state, Part.FEET);
                    case MASK -> touched(state, Part.MASK);
                };
            }
        }
        return state;
    }

    /** Everything of the one who moves, but for the mask. */
    State acted(State state) {
        return acted(state, by);
    }

    /** What an action is of. */
    private enum Part {
        HAND,
        FEET,
        BOTH,
        MASK,
        NOTHING;

        static Part of(Action action) {
            if (action instanceof Action.Mask) {
                return MASK;
            }
            if (action instanceof Action.Salute) {
                return NOTHING;
            }
            if (action instanceof Action.Step || action instanceof Action.Withdraw) {
                return FEET;
            }
            boolean blade = action instanceof Action.Strike
                    || action instanceof Action.Parry
                    || action instanceof Action.Place
                    || action instanceof Action.OnBlade
                    || action instanceof Action.Invite;
            return blade ? HAND : BOTH;
        }
    }

    private State touched(State state, Part part) {
        return switch (part) {
            case HAND -> hand(state, by);
            case FEET -> feet(state, by);
            case BOTH -> acted(state, by);
            case MASK -> masked(state, by);
            case NOTHING -> state;
        };
    }

    private State acted(State state, Side side) {
        return feet(hand(state, side), side);
    }

    private State hand(State state, Side side) {
        State next = state.with(side, state.of(side).handUnknown(where));
        boolean metPartner = !state.of(side.other()).equals(before.of(side.other()));
        if (metPartner) {
            next = next.with(side.other(), next.of(side.other()).handUnknown(where));
        }
        return escaped(next, side)
                .withEngagement(Fact.unknown(where))
                .withAttackOn(side.other(), Fact.unknown(where))
                .withParried(Fact.unknown(where))
                .withChange(Optional.of(new State.Change(side, Fact.unknown(where))));
    }

    private State feet(State state, Side side) {
        return escaped(state.with(side, state.of(side).withFeet(Fact.unknown(where))), side)
                .with(Range.UNKNOWN);
    }

    /** Whether an attack that was under way still is; where there was none, none has come of one's own doing. */
    private State escaped(State state, Side side) {
        boolean none = before.on(side).is(Optional.empty()) && state.on(side).is(Optional.empty());
        return none ? state : state.withAttackOn(side, Fact.unknown(where));
    }

    private State masked(State state, Side side) {
        return state.with(side, state.of(side).withMask(Fact.unknown(where)));
    }
}
