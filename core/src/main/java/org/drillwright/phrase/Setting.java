package org.drillwright.phrase;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillwright.model.Hands;
import org.drillwright.model.Side;
import org.drillwright.model.Weapon;
import org.drillwright.notation.Line;
import org.drillwright.notation.Position;

/**
 * What stays the same through a drill.
 *
 * @param partner whether there is somebody opposite
 * @param parries which line each position closes
 * @param guards the guard of {@code start} of each side, as far as it is known
 * @param engagedAtStart whether {@code start} has the blades touching
 */
public record Setting(
        Weapon weapon,
        Hands hands,
        boolean partner,
        ParryTable parries,
        Map<Side, Position> guards,
        boolean engagedAtStart) {

    public Setting {
        guards = Map.copyOf(guards);
    }

    public boolean isSabre() {
        return weapon == Weapon.SABRE;
    }

    /** The one line that a position closes for its owner, where the table has just one. */
    public Optional<Line> lineOf(Position position) {
        return parries.row(position).line();
    }

    Optional<Position> guardOf(Side side) {
        return Optional.ofNullable(guards.get(side));
    }

    Line across(Line line) {
        return Mirror.across(line, hands);
    }

    /** The lines in which an attack may come. */
    public List<Line> lines() {
        return isSabre()
                ? List.of(Line.HEAD, Line.INSIDE, Line.OUTSIDE)
                : List.of(Line.HIGH_INSIDE, Line.HIGH_OUTSIDE, Line.LOW_INSIDE, Line.LOW_OUTSIDE);
    }

    /** A contact in the line that a position closes for its owner. */
    Optional<Engagement> contact(Side owner, Position position, Optional<Side> holder) {
        return lineOf(position).map(line -> Engagement.of(owner, line, across(line), holder));
    }
}
