package org.drillwright.print.pose;

import java.util.Map;
import java.util.Optional;
import org.drillwright.model.Side;
import org.drillwright.model.Weapon;
import org.drillwright.phrase.State;

/**
 * What the picture of a count shows.
 *
 * @param partner whether there are two; without, only the follower is drawn
 * @param end how they stand at the end of the count
 * @param aimed the lines of each of those whose lines matter in the count
 */
public record Scene(Weapon weapon, boolean partner, State end, Map<Side, Aimed> aimed) {

    public Scene {
        aimed = Map.copyOf(aimed);
    }

    public Optional<Aimed> at(Side side) {
        return Optional.ofNullable(aimed.get(side));
    }

    public boolean isSabre() {
        return weapon == Weapon.SABRE;
    }
}
