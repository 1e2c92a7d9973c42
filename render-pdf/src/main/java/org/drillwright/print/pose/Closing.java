package org.drillwright.print.pose;

import java.util.Optional;
import java.util.Set;
import org.drillwright.notation.Line;
import org.drillwright.notation.Position;
import org.drillwright.phrase.Fencer;
import org.drillwright.phrase.ParryTable;

/**
 * Which lines a hand closes.
 *
 * @param known whether it is known at all
 * @param closed lines that it closes
 * @param doubtful lines of which it closes one or more, schools differ which
 * @param by the position that closes them, empty if none does
 */
public record Closing(boolean known, Set<Line> closed, Set<Line> doubtful, Optional<Position> by) {

    public static final Closing NONE = new Closing(true, Set.of(), Set.of(), Optional.empty());

    private static final Closing UNKNOWN = new Closing(false, Set.of(), Set.of(), Optional.empty());

    public Closing {
        closed = Set.copyOf(closed);
        doubtful = Set.copyOf(doubtful);
    }

    /**
     * What a hand closes.
     *
     * @param met the line of an attack that it parried, which then is closed where schools differ
     */
    public static Closing of(Fencer fencer, ParryTable table, Optional<Line> met) {
        if (fencer.extended().is(true) || fencer.covers().is(false)) {
            return NONE;
        }
        Optional<Position> hand = fencer.hand().value();
        if (hand.isEmpty() || !fencer.covers().isKnown() || !fencer.extended().isKnown()) {
            return UNKNOWN;
        }
        Set<Line> lines = table.row(hand.get()).lines();
        Set<Line> closed = met.filter(lines::contains).map(Set::of).orElse(lines.size() == 1 ? lines : Set.of());
        return new Closing(true, closed, closed.isEmpty() ? lines : Set.of(), hand);
    }
}
