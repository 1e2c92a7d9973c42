package org.drillwright.print.pose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Stream;
import org.drillwright.model.Weapon;
import org.drillwright.print.pose.Pairings.Pairing;
import org.drillwright.print.pose.body.Blade;
import org.drillwright.print.pose.body.PosedBody;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** A thrust that lands is seen to land: point on the target, arm stretched, blade bent. */
class LandedTest {

    private static final double MILLIMETRE = 0.001;

    private static PosedBody landed(Weapon weapon, Pairing pairing) {
        return new Thrust(weapon, pairing.place().seen(), 0).land(pairing.attacker());
    }

    private static void lands(Pairing pairing, Weapon weapon) {
        PosedBody person = landed(weapon, pairing);
        Blade blade = person.blade().orElseThrow();
        assertEquals(0, blade.tip().distance(pairing.place().seen()), MILLIMETRE, "the point is on the target");
        assertEquals(Arms.blade(weapon), blade.length(), MILLIMETRE, "the blade keeps its length");
        assertTrue(person.swordArm().orElseThrow().elbowAngle() >= 160, "the arm is stretched");
    }

    static Stream<Pairing> all() {
        return Pairings.all();
    }

    static Stream<Pairing> atOneInTheLunge() {
        return Pairings.atOneInTheLunge();
    }

    @ParameterizedTest
    @MethodSource("all")
    void with_the_foil(Pairing pairing) {
        lands(pairing, Weapon.FOIL);
        PosedBody person = landed(Weapon.FOIL, pairing);
        assertTrue(person.blade().orElseThrow().rise() >= 0.08, "the blade bends");
        assertEquals(pairing.attacker().toe(), person.front().toe().x(), MILLIMETRE, "from where the feet are");
    }

    @ParameterizedTest
    @MethodSource("all")
    void with_the_epee(Pairing pairing) {
        lands(pairing, Weapon.EPEE);
        assertTrue(landed(Weapon.EPEE, pairing).blade().orElseThrow().rise() >= 0.08, "the blade bends");
    }

    /** The body of one who lunged is farther away behind the front foot: the weight goes forward, the feet stay. */
    @ParameterizedTest
    @MethodSource("atOneInTheLunge")
    void with_the_arm_alone(Pairing pairing) {
        lands(pairing, Weapon.FOIL);
        PosedBody person = landed(Weapon.FOIL, pairing);
        assertTrue(person.blade().orElseThrow().rise() >= 0.08, "the blade bends");
        assertEquals(pairing.attacker().toe(), person.front().toe().x(), MILLIMETRE, "from where the feet are");
    }

    @ParameterizedTest
    @EnumSource(names = {"FOIL", "EPEE"})
    void from_too_far_away_they_stand_nearer(Weapon weapon) {
        Pairing far = Pairings.all().findFirst().orElseThrow();
        Pairing farther = new Pairing(far.attacker().ahead(-0.5), far.target(), far.line());
        lands(farther, weapon);
    }

    @ParameterizedTest
    @EnumSource(names = {"FOIL", "EPEE"})
    void from_too_near_the_arm_bends(Weapon weapon) {
        Pairing pairing = Pairings.all().findFirst().orElseThrow();
        PosedBody person = landed(weapon, new Pairing(pairing.attacker().ahead(0.3), pairing.target(), pairing.line()));
        Blade blade = person.blade().orElseThrow();
        assertEquals(0, blade.tip().distance(pairing.place().seen()), MILLIMETRE);
        assertTrue(person.swordArm().orElseThrow().elbowAngle() < 160);
    }
}
