package org.drillwright.print.pose;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.drillwright.model.Weapon;
import org.drillwright.notation.Line;
import org.drillwright.notation.Position;
import org.drillwright.print.pose.Pairings.Pairing;
import org.drillwright.print.pose.body.Blade;
import org.drillwright.print.pose.body.Point;
import org.drillwright.print.pose.body.Silhouette;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** A thrust that is parried is seen to miss: the blades touch, the point stands free. */
class ParriedTest {

    /** Which positions close which line: Encyclopaedia Britannica, 11th ed., p. 593; Warford 1884, p. 10-16. */
    private static final Map<Line, List<Position>> PARRIES = Map.of(
            Line.HIGH_INSIDE, List.of(Position.QUARTE, Position.PRIME),
            Line.HIGH_OUTSIDE, List.of(Position.SIXTE, Position.TIERCE),
            Line.LOW_INSIDE, List.of(Position.SEPTIME),
            Line.LOW_OUTSIDE, List.of(Position.OCTAVE, Position.SECONDE));

    static Stream<Arguments> parries() {
        return Stream.concat(Pairings.all(), Pairings.atOneInTheLunge())
                .flatMap(pairing -> PARRIES.get(pairing.line()).stream().map(parry -> Arguments.of(pairing, parry)));
    }

    private static Parrying.Carried carried(Pairing pairing, Position parry) {
        return new Parrying(Weapon.FOIL, parry, pairing.place(), Pairings.CAMERA)
                .carry(pairing.attacker(), pairing.target());
    }

    @ParameterizedTest(name = "{0}: {1}")
    @MethodSource("parries")
    void the_point_stands_free(Pairing pairing, Position parry) {
        Parrying.Carried carried = carried(pairing, parry);
        Point tip = carried.attacker().blade().orElseThrow().tip();
        double clear = Silhouette.of(carried.defender(), Pairings.CAMERA).distance(tip);
        assertTrue(clear >= 0.10, () -> "clear of the body on paper by " + clear);
        double aside = tip.distance(pairing.place().faced());
        assertTrue(aside >= 0.30, () -> "aside of the target by " + aside);
    }

    @ParameterizedTest(name = "{0}: {1}")
    @MethodSource("parries")
    void the_blades_touch_and_do_not_pass_through_each_other(Pairing pairing, Position parry) {
        Parrying.Carried carried = carried(pairing, parry);
        double apart = apart(
                carried.attacker().blade().orElseThrow(),
                carried.defender().blade().orElseThrow());
        assertTrue(apart > 0.004 && apart <= 0.015, () -> "between the blades are " + apart);
    }

    /** Between the lines that two straight blades lie on. */
    private static double apart(Blade one, Blade other) {
        Point first = one.tip().minus(one.bell());
        Point second = other.tip().minus(other.bell());
        return Math.abs(other.bell().minus(one.bell()).dot(first.cross(second).unit()));
    }

    /** The forte is the half next to the bell. */
    @ParameterizedTest(name = "{0}: {1}")
    @MethodSource("parries")
    void the_forte_parries(Pairing pairing, Position parry) {
        Parrying.Carried carried = carried(pairing, parry);
        Point crossing = carried.crossing().at();
        assertTrue(crossing.distance(carried.defender().blade().orElseThrow().bell()) < 0.45);
    }
}
