package org.drillwright.print.pose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.drillwright.model.Side;
import org.drillwright.model.Weapon;
import org.drillwright.notation.Measure;
import org.drillwright.notation.Position;
import org.drillwright.phrase.Range;
import org.drillwright.print.pose.body.Arm;
import org.drillwright.print.pose.body.Ball;
import org.drillwright.print.pose.body.Leg;
import org.drillwright.print.pose.body.Point;
import org.drillwright.print.pose.body.PosedBody;
import org.drillwright.print.pose.body.Posture;
import org.drillwright.print.pose.body.Proportions;
import org.drillwright.print.pose.body.RearHand;
import org.drillwright.print.pose.body.Trunk.Slice;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Bodies are bodies: bones keep their length, a left-hander is a mirror, nobody stands in anybody. */
class BodiesTest {

    private static final double MILLIMETRE = 0.001;

    private static final List<Posture> POSTURES = List.of(
            Posture.ON_GUARD,
            Posture.GATHERED,
            Posture.HALF_LUNGE,
            Posture.LUNGE,
            Posture.FLECHE,
            Posture.DUCKED,
            Posture.ASIDE,
            Posture.DRAWN_BACK,
            Posture.LEG_WITHDRAWN,
            Posture.STANDING);

    private static final List<RearHand> REAR_HANDS =
            List.of(RearHand.UP, RearHand.BACK, RearHand.HIP, RearHand.WITH_MASK, RearHand.DOWN, RearHand.TO_THE_FLOOR);

    /** A person, by name. */
    record Named(String name, PosedBody person) {
        @Override
        public String toString() {
            return name;
        }
    }

    static Stream<Named> people() {
        List<Named> people = new ArrayList<>();
        for (int posture = 0; posture < POSTURES.size(); posture++) {
            for (int rear = 0; rear < REAR_HANDS.size(); rear++) {
                for (Position position : Position.values()) {
                    people.add(new Named(
                            "posture %d, rear hand %d, %s".formatted(posture, rear, position.word()),
                            holding(POSTURES.get(posture), REAR_HANDS.get(rear), position, false)));
                }
            }
        }
        return people.stream();
    }

    private static PosedBody holding(Posture posture, RearHand rear, Position position, boolean leftHanded) {
        return new Stand(Side.LEADER, leftHanded, 0, posture, rear, true, true)
                .holding(Holds.parry(Weapon.SABRE, position), 0.88);
    }

    /** Drillis and Contini's shares of the height as Winter prints them, from memory, at 1.75 m. */
    @ParameterizedTest
    @MethodSource("people")
    void bones_keep_their_length(Named named) {
        PosedBody person = named.person();
        for (Leg leg : List.of(person.front(), person.rear())) {
            assertEquals(0.429, leg.hip().distance(leg.knee()), MILLIMETRE, "thigh");
            assertEquals(0.431, leg.knee().distance(leg.ankle()), MILLIMETRE, "shank");
            assertEquals(Proportions.FOOT, leg.heel().distance(leg.toe()), MILLIMETRE, "foot");
        }
        for (Arm arm : List.of(person.swordArm().orElseThrow(), person.rearArm())) {
            assertEquals(0.326, arm.shoulder().distance(arm.elbow()), MILLIMETRE, "upper arm");
            assertEquals(0.256, arm.elbow().distance(arm.wrist()), MILLIMETRE, "forearm");
        }
        assertEquals(0.504, person.trunk().pelvis().distance(person.trunk().shoulders()), MILLIMETRE, "trunk");
    }

    /** The weight goes forward only as far as the rear leg lets it. */
    @Test
    void the_rear_leg_reaches_the_floor_wherever_the_weight_is() {
        for (double forward = 0; forward <= 0.18; forward += 0.03) {
            PosedBody person = Pairings.stand(Side.LEADER, false, 1, Posture.ON_GUARD)
                    .forward(forward)
                    .holding(Holds.guard(Weapon.FOIL, Position.SIXTE), 0.9);
            assertEquals(0.431, person.rear().knee().distance(person.rear().ankle()), MILLIMETRE);
        }
    }

    @ParameterizedTest
    @MethodSource("people")
    void knees_and_elbows_bend_the_right_way(Named named) {
        PosedBody person = named.person();
        Point front = person.front().knee();
        double between =
                person.front().hip().towards(person.front().ankle(), 0.5).dot(person.ahead());
        assertTrue(front.dot(person.ahead()) > between, "the front knee bends forward");
        Arm arm = person.swordArm().orElseThrow();
        assertTrue(arm.elbow().z() < arm.shoulder().towards(arm.wrist(), 0.56).z(), "the elbow hangs down");
    }

    @ParameterizedTest
    @EnumSource
    void a_left_hander_is_the_mirror_image(Position position) {
        for (Posture posture : POSTURES) {
            List<Point> right = joints(holding(posture, RearHand.UP, position, false));
            List<Point> left = joints(holding(posture, RearHand.UP, position, true));
            for (int at = 0; at < right.size(); at++) {
                Point mirrored = new Point(
                        right.get(at).x(), -right.get(at).y(), right.get(at).z());
                assertEquals(0, mirrored.distance(left.get(at)), 1e-9, posture + ", joint " + at);
            }
        }
    }

    private static List<Point> joints(PosedBody person) {
        Arm arm = person.swordArm().orElseThrow();
        Arm rear = person.rearArm();
        return List.of(
                person.front().hip(),
                person.front().knee(),
                person.front().ankle(),
                person.front().toe(),
                person.rear().hip(),
                person.rear().knee(),
                person.rear().ankle(),
                person.rear().toe(),
                arm.shoulder(),
                arm.elbow(),
                arm.wrist(),
                rear.shoulder(),
                rear.elbow(),
                rear.wrist(),
                person.blade().orElseThrow().bell(),
                person.blade().orElseThrow().tip(),
                person.head().centre(),
                person.head().centre().plus(person.head().looking()));
    }

    /** As near as they can stand, on guard and in the lunge: trunk, head and legs are apart by a hand's breadth. */
    @ParameterizedTest
    @EnumSource(names = {"CLOSE", "EXTENSION", "LUNGE", "ADVANCE_LUNGE", "OUT"})
    void bodies_never_meet(Measure measure) {
        double distance = Distance.of(Range.of(measure), false);
        for (Posture leader : List.of(Posture.ON_GUARD, Posture.LUNGE)) {
            for (Posture follower : List.of(Posture.ON_GUARD, Posture.LUNGE)) {
                for (int hands = 0; hands < 4; hands++) {
                    double apart = apart(
                            body(Pairings.stand(Side.LEADER, (hands & 1) > 0, distance, leader)),
                            body(Pairings.stand(Side.FOLLOWER, (hands & 2) > 0, distance, follower)));
                    assertTrue(apart >= 0.10, () -> "apart by " + apart);
                }
            }
        }
    }

    private static List<Ball> body(Stand stand) {
        PosedBody person = stand.holding(Holds.guard(Weapon.FOIL, Position.SIXTE), 0.9);
        Stream<Ball> trunk = person.trunk().slices().stream().map(BodiesTest::round);
        Stream<Ball> legs = Stream.of(person.front(), person.rear()).flatMap(leg -> leg.balls().stream());
        Stream<Ball> shoes = Stream.of(person.front(), person.rear())
                .flatMap(leg -> Stream.of(new Ball(leg.heel(), 0.042), new Ball(leg.toe(), 0.042)));
        Ball head = new Ball(person.head().centre(), 0.142);
        return Stream.of(trunk, legs, shoes, Stream.of(head))
                .flatMap(part -> part)
                .toList();
    }

    /** A ball round the whole slice. */
    private static Ball round(Slice slice) {
        return new Ball(
                slice.middle(), Math.max(slice.width().length(), slice.depth().length()));
    }

    private static double apart(List<Ball> one, List<Ball> other) {
        double least = Double.MAX_VALUE;
        for (Ball first : one) {
            for (Ball second : other) {
                double between = first.centre().distance(second.centre()) - first.radius() - second.radius();
                least = Math.min(least, between);
            }
        }
        return least;
    }

    /** The more foot actions it takes to touch, the farther apart they are drawn. */
    @Test
    void distances_grow_with_the_measure() {
        double before = 0;
        for (Measure measure : Measure.values()) {
            double now = Distance.of(Range.of(measure), false);
            assertTrue(now > before, measure.word());
            before = now;
        }
    }
}
