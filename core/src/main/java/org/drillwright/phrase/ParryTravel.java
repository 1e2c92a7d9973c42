package org.drillwright.phrase;

import java.util.Optional;
import org.drillwright.notation.Action.ParryKind;
import org.drillwright.notation.Line;
import org.drillwright.notation.Position;

/** Names the way of a hand from one position to another (facts: Warford 1884, p. 10-17; diagonals from memory). */
public final class ParryTravel {

    private ParryTravel() {}

    /**
     * Simple: the side changes, the height does not. Half-circular: the height changes, the side does not. Diagonal: both.
     * Unstated if neither changes; empty where the table does not give each position one line.
     */
    public static Optional<ParryKind> kind(Setting setting, Position from, Position to) {
        Optional<Line> start = setting.lineOf(from);
        Optional<Line> end = setting.lineOf(to);
        if (start.isEmpty() || end.isEmpty() || setting.isSabre()) {
            return Optional.empty();
        }
        boolean side = !Mirror.sameSide(start.get(), end.get());
        boolean height = !Mirror.sameHeight(start.get(), end.get());
        if (side && height) {
            return Optional.of(ParryKind.DIAGONAL);
        }
        if (height) {
            return Optional.of(ParryKind.HALF_CIRCULAR);
        }
        return Optional.of(side ? ParryKind.SIMPLE : ParryKind.UNSTATED);
    }
}
