package org.drillwright.print.pose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.drillwright.model.Side;
import org.drillwright.phrase.Replay;
import org.drillwright.print.Told;
import org.drillwright.print.pose.body.Camera;
import org.drillwright.print.pose.body.PosedBody;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whatever feet and bodies can be told to do has a pose of its own. How a fencer tells them: common practice, no source. */
class PosturesTest {

    private static final String LUNGE_DISTANCE = "On guard in sixte, blades apart, at lunge distance.";

    private static Pose.Pair pair(String weapon, String start, String leader, String follower) {
        Replay replay = Told.count(weapon, start, leader, follower);
        return (Pose.Pair) Posing.of(SceneReader.read(replay).get(0));
    }

    private static Pose.Pair pair(String leader, String follower) {
        return pair("epee", LUNGE_DISTANCE, leader, follower);
    }

    /** How far the rear heel is ahead of the front heel, in metres. */
    private static double rearAhead(PosedBody person) {
        return person.rear().heel().minus(person.front().heel()).dot(person.ahead());
    }

    /** Forward and up from the hips, in degrees from upright. */
    private static double lean(PosedBody person) {
        return Math.toDegrees(Math.atan2(
                person.trunk().up().dot(person.ahead()), person.trunk().up().z()));
    }

    @Test
    void in_a_fleche_the_rear_foot_passes_and_the_body_falls_forward() {
        PosedBody leader = pair("Straight thrust to the high inside line with a fleche.", "Receive the hit.")
                .leader();
        assertTrue(rearAhead(leader) > 0.3, () -> "ahead by " + rearAhead(leader));
        assertTrue(lean(leader) > 25, () -> "leans by " + lean(leader));
    }

    @Test
    void a_rear_foot_brought_up_stands_near_the_other() {
        double guard = rearAhead(pair("Hold.", "Hold.").leader());
        double gathered = rearAhead(pair("Bring the rear foot up.", "Hold.").leader());
        assertEquals(0.42, gathered - guard, 0.001);
    }

    /** A stroke that is still to be made shows how far it has to go: nothing lies on that way, nor along the blade. */
    @ParameterizedTest
    @CsvSource({
        "foil, at advance-lunge distance, Straight thrust to the high inside line with a lunge., Hold.",
        "foil, at lunge distance, Straight thrust to the high inside line., Hold.",
        "epee, at lunge distance, Straight thrust to the high inside line with a lunge., Retreat.",
        "sabre, at lunge distance, Cut at the head with a lunge., Retreat."
    })
    void a_stroke_that_is_short_stands_free(String weapon, String measure, String stroke, String answer) {
        Pose.Pair pair = pair(weapon, "On guard in sixte. blades apart. " + measure + ".", stroke, answer);
        double between = BladePlay.between(
                Camera.oblique(),
                pair.leader().blade().orElseThrow(),
                pair.follower().blade().orElseThrow());
        assertTrue(between >= BladePlay.BETWEEN, () -> "apart by " + between);
    }

    @ParameterizedTest
    @CsvSource({
        "Advance., BOTH_FEET",
        "Cross step forward., CROSSING",
        "Jump forward., JUMP",
        "Half step forward., FRONT_FOOT",
        "Bring the rear foot up., REAR_FOOT",
        "Appel., STAMP",
        "Fleche., PASSING"
    })
    void every_way_of_the_feet_has_its_sign(String words, FootMove.Kind kind) {
        List<FootMove> feet = pair(words, "Hold.").feet();
        assertEquals(List.of(kind), feet.stream().map(FootMove::kind).toList());
    }

    /** As near as they get, points go up: nobody's blade lies across anybody. */
    @Test
    void close_to_each_other_blades_point_up() {
        Pose.Pair pair =
                pair("foil", "On guard in sixte. blades apart. at extension distance.", "Advance.", "Advance.");
        for (PosedBody person : List.of(pair.leader(), pair.follower())) {
            assertTrue(person.blade().orElseThrow().tip().z()
                    > person.head().centre().z());
        }
    }

    @Test
    void each_stroke_of_a_count_is_shown_with_the_feet_that_belong_to_it() {
        Replay replay = Told.count(
                "foil",
                LUNGE_DISTANCE,
                "Straight thrust to the high inside line with a lunge.",
                "Parry quarte and riposte straight to the high inside line.");
        List<Scene> strokes =
                SceneReader.strokes(replay.setting(), replay.counts().get(0));
        assertEquals(
                List.of(Side.LEADER, Side.FOLLOWER),
                strokes.stream().map(scene -> scene.stroke().orElseThrow().by()).toList());
        assertEquals(
                List.of(1, 0),
                strokes.stream().map(scene -> scene.feet().size()).toList());
    }
}
