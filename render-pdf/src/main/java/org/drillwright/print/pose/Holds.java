package org.drillwright.print.pose;

import java.util.EnumMap;
import java.util.Map;
import org.drillwright.model.Weapon;
import org.drillwright.notation.Position;
import org.drillwright.print.pose.body.Hold;

/**
 * Where hand and blade are in each position, on guard and at the end of a parry. Sides and heights as the books tell them
 * (pronation, point high or low); the figures were judged by eye on drawn sheets, no source.
 */
final class Holds {

    private record Entry(Hold guard, Hold parry) {}

    private static final Entry SIXTE = new Entry(Hold.of(0.39, 0.09, -0.26, 15, -2), Hold.of(0.42, 0.17, -0.18, 24, 6));

    private static final Map<Position, Entry> THRUST = new EnumMap<>(Position.class);

    private static final Map<Position, Entry> SABRE = new EnumMap<>(Position.class);

    static {
        THRUST.put(Position.SIXTE, SIXTE);
        THRUST.put(Position.QUARTE, new Entry(Hold.of(0.39, -0.21, -0.26, 17, 5), Hold.of(0.43, -0.30, -0.15, 30, 0)));
        THRUST.put(Position.OCTAVE, new Entry(Hold.of(0.36, 0.08, -0.27, -20, 3), Hold.of(0.45, 0.13, -0.24, -26, 4)));
        THRUST.put(
                Position.SEPTIME, new Entry(Hold.of(0.37, -0.20, -0.20, -22, 2), Hold.of(0.45, -0.30, -0.14, -24, -2)));
        THRUST.put(Position.TIERCE, new Entry(Hold.of(0.34, 0.10, -0.25, 14, -4), Hold.of(0.42, 0.18, -0.22, 18, 4)));
        THRUST.put(
                Position.SECONDE, new Entry(Hold.of(0.37, 0.14, -0.24, -24, -3), Hold.of(0.45, 0.20, -0.26, -30, 8)));
        THRUST.put(Position.PRIME, new Entry(Hold.of(0.30, -0.24, -0.02, -40, 10), Hold.of(0.34, -0.30, 0.02, -45, 2)));
        both(THRUST, Position.QUINTE, Hold.of(0.30, -0.26, -0.36, 26, 14));
        SABRE.putAll(THRUST);
        SABRE.put(Position.TIERCE, new Entry(Hold.of(0.28, 0.14, -0.33, 52, -12), Hold.of(0.34, 0.22, -0.34, 62, -6)));
        SABRE.put(Position.QUARTE, new Entry(Hold.of(0.28, -0.20, -0.33, 52, 10), Hold.of(0.34, -0.30, -0.33, 62, 8)));
        SABRE.put(Position.QUINTE, new Entry(Hold.of(0.26, 0.14, 0.27, 8, -66), Hold.of(0.32, 0.15, 0.30, 7, -64)));
        both(SABRE, Position.PRIME, Hold.of(0.28, -0.22, 0.05, -50, 12));
        both(SABRE, Position.SECONDE, Hold.of(0.34, 0.16, -0.16, -40, -8));
    }

    /** At attention: the point low beside the front foot. */
    static final Hold AT_REST = Hold.of(0.12, 0.16, -0.50, -46, 8);

    /** A high line offered: hand and point low. */
    static final Hold GIVES_HIGH = Hold.of(0.36, 0.16, -0.34, -50, 14);

    /** A low line offered: the point up. */
    static final Hold GIVES_LOW = Hold.of(0.40, 0.06, -0.20, 52, 0);

    /** The arm stopped half-way by a stop hit. */
    static final Hold STOPPED = Hold.of(0.22, 0.18, -0.34, -42, 10);

    /** The hand drawn back and up to the shoulder, out of the way of a stroke at it. */
    static final Hold WITHDRAWN = Hold.of(0.12, 0.16, -0.10, 40, 0);

    /** An arm without a weapon, hanging down. */
    static final Hold HANGING = Hold.of(0.03, 0.08, -0.56, -80, 0);

    private Holds() {}

    private static void both(Map<Position, Entry> table, Position position, Hold hold) {
        table.put(position, new Entry(hold, hold));
    }

    private static Entry entry(Weapon weapon, Position position) {
        return (weapon == Weapon.SABRE ? SABRE : THRUST).getOrDefault(position, SIXTE);
    }

    static Hold guard(Weapon weapon, Position position) {
        return entry(weapon, position).guard();
    }

    static Hold parry(Weapon weapon, Position position) {
        return entry(weapon, position).parry();
    }
}
