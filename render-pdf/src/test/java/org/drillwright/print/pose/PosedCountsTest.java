package org.drillwright.print.pose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Stream;
import org.drillwright.check.Subject;
import org.drillwright.model.Side;
import org.drillwright.print.Example;
import org.drillwright.print.pose.body.Blade;
import org.drillwright.print.pose.body.Camera;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Counts of the example school, posed: what a reader of their words expects to see. */
class PosedCountsTest {

    private static Pose pose(String drill, int count) {
        return Posing.of(SceneReader.read(Example.drill(drill).replay()).get(count - 1));
    }

    private static Pose.Pair pair(String drill, int count) {
        return assertInstanceOf(Pose.Pair.class, pose(drill, count));
    }

    /** By hand from the words of the drills. */
    @ParameterizedTest
    @CsvSource({
        "parry-of-quarte, 1, Parried, LEADER",
        "parry-of-quarte, 2, Landed, FOLLOWER",
        "parry-of-sixte, 1, Parried, LEADER",
        "parry-of-septime, 1, Parried, LEADER",
        "parry-of-septime, 2, Landed, FOLLOWER",
        "counter-riposte, 2, Parried, FOLLOWER",
        "counter-riposte, 3, Landed, LEADER",
        "disengage, 1, Landed, LEADER",
        "one-two, 1, Threatens, LEADER",
        "one-two, 2, Landed, LEADER",
        "sabre-cut-to-head, 1, Parried, LEADER",
        "sabre-cut-to-head, 2, Landed, FOLLOWER",
        "straight-thrust-with-lunge, 1, Landed, LEADER",
        "disengage, 2, Engaged, ",
        "parry-of-quarte, 3, Apart, "
    })
    void a_count_ends_as_its_words_say(String drill, int count, String kind, Side by) {
        Meeting meeting = pair(drill, count).meeting();
        assertEquals(kind, meeting.getClass().getSimpleName());
        if (meeting instanceof Meeting.Landed landed) {
            assertEquals(by, landed.by());
        } else if (meeting instanceof Meeting.Parried parried) {
            assertEquals(by, parried.by());
        } else if (meeting instanceof Meeting.Threatens threatens) {
            assertEquals(by, threatens.by());
        }
    }

    @ParameterizedTest
    @CsvSource({
        "disengage, 1, DISENGAGE, LEADER",
        "cut-over, 1, CUT_OVER, LEADER",
        "circular-parry-of-sixte, 1, CIRCULAR, FOLLOWER",
        "counter-disengage, 3, CIRCULAR, LEADER",
        "sabre-cut-to-head, 1, CUT, LEADER"
    })
    void the_point_goes_as_the_words_say(String drill, int count, Trajectory.Kind kind, Side by) {
        assertTrue(
                pose(drill, count).ways().stream().anyMatch(way -> way.kind() == kind && way.by() == by),
                () -> pose(drill, count).ways().toString());
    }

    /** A lunge and its recovery carry the front foot the same way there and back; a step carries both feet. */
    @ParameterizedTest
    @CsvSource({
        "parry-of-quarte, 1, LEADER, FRONT_FOOT, 0.62",
        "parry-of-quarte, 3, LEADER, FRONT_FOOT, -0.62",
        "advance-and-retreat, 1, FOLLOWER, BOTH_FEET, 0.42",
        "advance-and-retreat, 3, FOLLOWER, BOTH_FEET, -0.42",
        "appel-and-jumps, 2, FOLLOWER, JUMP, 0.42",
        "recover-forward, 2, FOLLOWER, REAR_FOOT, 0.62"
    })
    void feet_go_as_the_words_say(String drill, int count, Side by, FootMove.Kind kind, double forward) {
        FootMove move = pose(drill, count).feet().stream()
                .filter(one -> one.by() == by)
                .findFirst()
                .orElseThrow();
        assertEquals(kind, move.kind());
        assertEquals(forward, (move.to() - move.from()) * (by == Side.LEADER ? 1 : -1), 0.001);
    }

    static Stream<Arguments> everyPair() {
        return Example.drills().stream()
                .filter(drill -> drill.replay().setting().partner())
                .flatMap(drill -> Stream.iterate(1, count -> count + 1)
                        .limit(drill.replay().counts().size())
                        .map(count -> Arguments.of(id(drill), count)));
    }

    private static String id(Subject drill) {
        return drill.drill().id();
    }

    /** Blades that are apart do not cross on paper; blades that touch do. */
    @ParameterizedTest(name = "{0}, count {1}")
    @MethodSource("everyPair")
    void blades_cross_on_paper_only_where_they_touch(String drill, int count) {
        Pose.Pair pair = pair(drill, count);
        if (pair.leader().blade().isEmpty() || pair.follower().blade().isEmpty()) {
            return;
        }
        Blade leader = pair.leader().blade().get();
        Blade follower = pair.follower().blade().get();
        double between = BladePlay.between(Camera.oblique(), leader, follower);
        if (pair.meeting() instanceof Meeting.Apart) {
            assertTrue(between >= 0.10, () -> "apart by " + between);
        } else if (pair.meeting() instanceof Meeting.Engaged || pair.meeting() instanceof Meeting.Parried) {
            assertEquals(0, between);
        }
    }

    /** What the bar under them shows is what is between their feet. */
    @ParameterizedTest(name = "{0}, count {1}")
    @MethodSource("everyPair")
    void the_measure_is_between_the_front_feet(String drill, int count) {
        Pose.Pair pair = pair(drill, count);
        double between =
                pair.follower().front().toe().x() - pair.leader().front().toe().x();
        assertEquals(between, pair.measure(), 1e-9);
    }

    /** The same count gives the same pose. */
    @ParameterizedTest(name = "{0}, count {1}")
    @MethodSource("everyPair")
    void a_pose_depends_on_nothing_else(String drill, int count) {
        assertEquals(pose(drill, count), pose(drill, count));
    }
}
