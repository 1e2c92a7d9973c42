package org.drillwright.print.pose;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillwright.model.Hands;
import org.drillwright.model.Side;
import org.drillwright.model.Weapon;
import org.drillwright.notation.Action.Displacement;
import org.drillwright.phrase.Setting;
import org.drillwright.phrase.State;

/**
 * What the picture of a count shows.
 *
 * @param partner whether there are two; without, only the follower is drawn
 * @param moment how they stand when the last stroke ends, or at the end of a count without one
 * @param end how they stand at the end of the count
 * @param aimed the lines of each of those whose lines matter in the count
 * @param stroke the last stroke, empty if there was none
 * @param feet what feet did up to the moment, in their order
 * @param displaced where those took the target who took it away up to the moment
 * @param gestures what else hands did
 * @param mark whether a mark hangs opposite one who works alone
 */
public record Scene(
        Weapon weapon,
        Hands hands,
        boolean partner,
        State moment,
        State end,
        Map<Side, Aimed> aimed,
        Optional<Stroke> stroke,
        List<Footing> feet,
        Map<Side, Displacement> displaced,
        Map<Side, Gesture> gestures,
        boolean mark) {

    public Scene {
        aimed = Map.copyOf(aimed);
        feet = List.copyOf(feet);
        displaced = Map.copyOf(displaced);
        gestures = Map.copyOf(gestures);
    }

    /** Two who only stand there, in the hands and with the weapon of a drill. */
    public static Scene standing(Setting setting, State state) {
        return standing(setting.weapon(), setting.hands(), setting.partner(), state);
    }

    public static Scene standing(Weapon weapon, Hands hands, boolean partner, State state) {
        return new Scene(
                weapon, hands, partner, state, state, Map.of(), Optional.empty(), List.of(), Map.of(), Map.of(), false);
    }

    public Optional<Aimed> at(Side side) {
        return Optional.ofNullable(aimed.get(side));
    }

    public Optional<Displacement> displaced(Side side) {
        return Optional.ofNullable(displaced.get(side));
    }

    public Optional<Gesture> gesture(Side side) {
        return Optional.ofNullable(gestures.get(side));
    }

    public boolean isSabre() {
        return weapon == Weapon.SABRE;
    }
}
