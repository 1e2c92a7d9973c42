package org.drillwright.print.pose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.drillwright.check.Subject;
import org.drillwright.model.Side;
import org.drillwright.phrase.Count;
import org.drillwright.phrase.Replay;
import org.drillwright.print.Example;
import org.drillwright.print.pose.body.Arm;
import org.drillwright.print.pose.body.Leg;
import org.drillwright.print.pose.body.Point;
import org.drillwright.print.pose.body.PosedBody;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Between the counts of all drills of the example school. */
class PassageTest {

    private static final double MILLIMETRE = 0.001;

    private static final List<Double> SHARES = List.of(0.0, 0.1, 0.25, 0.5, 0.75, 0.9, 1.0);

    static Stream<Subject> drills() {
        return Example.drills().stream();
    }

    private static List<Passage> passages(Subject drill) {
        Replay replay = drill.replay();
        List<Pose> poses = new ArrayList<>(List.of(Posing.of(Scene.standing(replay.setting(), replay.start()))));
        for (Count count : replay.counts()) {
            poses.add(Posing.of(SceneReader.read(replay.setting(), count)));
        }
        List<Passage> passages = new ArrayList<>();
        for (int at = 1; at < poses.size(); at++) {
            passages.add(new Passage(poses.get(at - 1), poses.get(at)));
        }
        return passages;
    }

    private static List<PosedBody> people(Pose pose) {
        return pose instanceof Pose.Pair pair
                ? List.of(pair.leader(), pair.follower())
                : List.of(((Pose.Alone) pose).person());
    }

    /** Bones and blade, in metres. */
    private static Map<String, Double> lengths(PosedBody person) {
        Map<String, Double> lengths = new TreeMap<>();
        lengths.put("trunk", person.trunk().pelvis().distance(person.trunk().shoulders()));
        Map.of("front", person.front(), "rear", person.rear()).forEach((name, leg) -> {
            lengths.put(name + " thigh", leg.hip().distance(leg.knee()));
            lengths.put(name + " shank", leg.knee().distance(leg.ankle()));
            lengths.put(name + " foot", leg.heel().distance(leg.toe()));
        });
        person.swordArm().ifPresent(arm -> put("sword", arm, lengths));
        put("rear", person.rearArm(), lengths);
        person.blade().ifPresent(blade -> lengths.put("blade", blade.length()));
        return lengths;
    }

    private static void put(String name, Arm arm, Map<String, Double> lengths) {
        lengths.put(name + " upper arm", arm.shoulder().distance(arm.elbow()));
        lengths.put(name + " forearm", arm.elbow().distance(arm.wrist()));
    }

    /** On the way all are as long as at its ends. */
    @ParameterizedTest
    @MethodSource("drills")
    void bones_and_blades_keep_their_lengths(Subject drill) {
        for (Passage passage : passages(drill)) {
            for (double share : SHARES) {
                passage.at(share).ifPresent(pose -> {
                    for (int at = 0; at < people(pose).size(); at++) {
                        Map<String, Double> old = lengths(people(passage.from()).get(at));
                        Map<String, Double> next = lengths(people(passage.to()).get(at));
                        lengths(people(pose).get(at)).forEach((bone, length) -> {
                            double low = Math.min(old.get(bone), next.get(bone)) - 2 * MILLIMETRE;
                            double high = Math.max(old.get(bone), next.get(bone)) + 2 * MILLIMETRE;
                            assertTrue(low <= length && length <= high, bone + " at " + share + ": " + length);
                        });
                    }
                });
            }
        }
    }

    @ParameterizedTest
    @MethodSource("drills")
    void it_begins_and_ends_where_they_stand(Subject drill) {
        for (Passage passage : passages(drill)) {
            passage.at(0).ifPresent(pose -> assertSame(passage.from(), pose));
            passage.at(1).ifPresent(pose -> assertSame(passage.to(), pose));
        }
    }

    private static void assertSame(Pose wanted, Pose pose) {
        for (int at = 0; at < people(pose).size(); at++) {
            PosedBody one = people(wanted).get(at);
            PosedBody other = people(pose).get(at);
            assertThere(one.front().knee(), other.front().knee(), "front knee");
            assertThere(one.rear().toe(), other.rear().toe(), "rear toes");
            assertThere(one.head().centre(), other.head().centre(), "head");
            assertThere(one.rearArm().elbow(), other.rearArm().elbow(), "rear elbow");
            other.swordArm()
                    .ifPresent(arm -> assertThere(one.swordArm().orElseThrow().elbow(), arm.elbow(), "elbow"));
            other.blade()
                    .ifPresent(
                            blade -> assertThere(one.blade().orElseThrow().tip(), blade.tip(), "point of the blade"));
        }
    }

    private static void assertThere(Point wanted, Point point, String what) {
        assertEquals(0, wanted.distance(point), 2 * MILLIMETRE, what);
    }

    /** Feet on the floor at both ends go along it. */
    @ParameterizedTest
    @MethodSource("drills")
    void feet_go_along_the_floor(Subject drill) {
        for (Passage passage : passages(drill)) {
            passage.at(0.5).ifPresent(pose -> {
                for (int at = 0; at < people(pose).size(); at++) {
                    assertFloor(
                            people(passage.from()).get(at).front(),
                            people(passage.to()).get(at).front(),
                            people(pose).get(at).front());
                    assertFloor(
                            people(passage.from()).get(at).rear(),
                            people(passage.to()).get(at).rear(),
                            people(pose).get(at).rear());
                }
            });
        }
    }

    private static void assertFloor(Leg old, Leg next, Leg leg) {
        if (Math.max(old.heel().z(), next.heel().z()) < MILLIMETRE) {
            assertEquals(0, leg.heel().z(), MILLIMETRE);
        }
    }

    /** Who did not move the feet stands, on the floor of both, where that one stood; a lunge leaves the rear foot behind. */
    @ParameterizedTest
    @MethodSource("drills")
    void who_stands_stands_still(Subject drill) {
        for (Passage passage : passages(drill)) {
            List<Side> moved =
                    passage.to().feet().stream().map(FootMove::by).distinct().toList();
            if (moved.size() == 1 && passage.to() instanceof Pose.Pair to && passage.from() instanceof Pose.Pair from) {
                boolean leads = moved.get(0) == Side.LEADER;
                PosedBody before = leads ? from.follower() : from.leader();
                PosedBody after = leads ? to.follower() : to.leader();
                if (before.feetKnown() && after.feetKnown()) {
                    assertEquals(before.front().toe().x(), after.front().toe().x() + passage.shift(), MILLIMETRE);
                }
            }
        }
    }
}
