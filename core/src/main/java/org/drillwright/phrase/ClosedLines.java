package org.drillwright.phrase;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drillwright.model.Side;
import org.drillwright.notation.Action;
import org.drillwright.notation.Line;
import org.drillwright.notation.Position;

/** Tells whether a line of one of the two is closed to a stroke, and by what. */
final class ClosedLines {

    private final State state;
    private final Setting setting;
    private final Side owner;

    ClosedLines(State state, Setting setting, Side owner) {
        this.state = state;
        this.setting = setting;
        this.owner = owner;
    }

    /**
     * What closes the line, if it is certain that something does: a guard, or the blade in contact.
     *
     * @return the position that closes it, empty inside if it is the contact alone
     */
    Optional<Optional<Position>> closing(Line line, Action.Strike strike) {
        boolean passes = strike.opposition() || strike.path() == Action.Path.GLIDE;
        if (passes || state.of(owner).extended().is(true)) {
            return Optional.empty();
        }
        Optional<Engagement> contact = state.engagement().value().flatMap(blades -> blades);
        boolean inContact = contact.filter(one -> one.lineOf(owner) == line).isPresent();
        boolean attackersContact = inContact
                && contact.flatMap(Engagement::holder)
                        .filter(owner.other()::equals)
                        .isPresent();
        if (attackersContact) {
            return Optional.empty();
        }
        Optional<Position> guard = guardClosing(line);
        if (guard.isPresent()) {
            return Optional.of(guard);
        }
        boolean plain = strike.path() == Action.Path.DIRECT || strike.path() == Action.Path.UNSTATED;
        boolean held = contact.flatMap(Engagement::holder).filter(owner::equals).isPresent();
        boolean met = state.of(owner).covers().is(true);
        return inContact && met && (held || plain) ? Optional.of(Optional.empty()) : Optional.empty();
    }

    /** The position in which the hand certainly closes the line. */
    private Optional<Position> guardClosing(Line line) {
        Fencer fencer = state.of(owner);
        boolean closes = fencer.covers().is(true) && fencer.extended().is(false);
        return fencer.hand()
                .value()
                .filter(position -> closes)
                .filter(position -> setting.parries().row(position).firm())
                .filter(position -> setting.parries().row(position).lines().contains(line));
    }

    /** The lines that nothing closes. */
    List<Line> open(Action.Strike strike) {
        List<Line> open = new ArrayList<>(setting.lines());
        open.removeIf(line -> closing(line, strike).isPresent());
        return open;
    }

    /** Whether all that decides is known. */
    boolean isKnown() {
        Fencer fencer = state.of(owner);
        boolean extended = fencer.extended().is(true);
        boolean guard = fencer.covers().is(false)
                || (fencer.covers().isKnown()
                        && fencer.hand().isKnown()
                        && fencer.extended().isKnown());
        return extended || guard;
    }
}
