package org.drillwright.print.pose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.drillwright.print.Told;
import org.drillwright.print.pose.body.Camera;
import org.drillwright.print.pose.body.Point;
import org.drillwright.print.pose.body.PosedBody;
import org.drillwright.print.pose.body.Silhouette;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Who takes the target away is no longer where the point goes, and is seen to be where the words say. That one ducks below the
 * blade, and that an inquartata carries the rear foot across to the side of the sword, is of Barbasetti, The Art of the Foil,
 * 1932 (from memory); the rest is common practice, no source.
 */
class EvadedTest {

    private static final String THRUST = "Straight thrust to the high inside line with a lunge.";

    /** From the side of a body to a mark of its own radius there is white paper, in metres. */
    private static final double FREE = 0.02;

    private static Pose.Pair pair(String weapon, String leader, String follower) {
        String guard = weapon.equals("sabre") ? "tierce" : "sixte";
        return (Pose.Pair) Posing.of(SceneReader.read(Told.count(
                        weapon, "On guard in " + guard + ", blades apart, at lunge distance.", leader, follower))
                .get(0));
    }

    private static Meeting.Evaded evaded(Pose.Pair pair) {
        return (Meeting.Evaded) pair.meeting();
    }

    private static Meeting.Evaded evaded(String answer) {
        return evaded(pair("epee", THRUST, answer));
    }

    private static double lean(PosedBody person) {
        Point up = person.trunk().up();
        return Math.toDegrees(Math.atan2(up.dot(person.ahead()), up.z()));
    }

    @ParameterizedTest
    @CsvSource({
        "epee, Straight thrust to the high inside line with a lunge., Duck.",
        "foil, Straight thrust to the high outside line with a lunge., Duck.",
        "sabre, Cut at the head with a lunge., Duck.",
        "epee, Straight thrust to the high inside line with a lunge., Sidestep.",
        "sabre, Cut at the head with a lunge., Sidestep.",
        "epee, Straight thrust to the high inside line with a lunge., Lean back.",
        "epee, Straight thrust to the high inside line with a lunge., Evade.",
        "epee, Thrust at the foot with a lunge., Withdraw the front foot.",
        "epee, Thrust at the foot with a lunge., Evade.",
        "epee, Thrust at the hand with a lunge., Pull the hand out of the way."
    })
    void where_the_point_goes_is_free_of_the_body(String weapon, String stroke, String answer) {
        Pose.Pair pair = pair(weapon, stroke, answer);
        double clear = Silhouette.of(pair.follower(), Camera.oblique())
                .distance(evaded(pair).target().seen());
        assertTrue(clear >= FREE, () -> "clear by " + clear);
    }

    @ParameterizedTest
    @CsvSource({"epee", "sabre"})
    void who_ducks_is_below_the_blade(String weapon) {
        String stroke = weapon.equals("sabre") ? "Cut at the head with a lunge." : THRUST;
        Pose.Pair pair = pair(weapon, stroke, "Duck.");
        double head = pair.follower().head().centre().z();
        assertTrue(head < pair.leader().blade().orElseThrow().tip().z() - 0.14, () -> "head at " + head);
        assertTrue(head < evaded(pair).stood().head().centre().z() - 0.4);
    }

    @Test
    void who_goes_aside_stands_on_the_side_of_the_sword() {
        Meeting.Evaded evaded = evaded("Sidestep.");
        PosedBody person = pair("epee", THRUST, "Sidestep.").follower();
        PosedBody stood = evaded.stood();
        double body = person.trunk().pelvis().minus(stood.trunk().pelvis()).dot(stood.outside());
        double foot = person.rear().heel().minus(stood.rear().heel()).dot(stood.outside());
        assertTrue(body > 0.15, () -> "body aside by " + body);
        assertTrue(foot > 0.3, () -> "rear foot aside by " + foot);
    }

    @Test
    void who_leans_back_keeps_the_feet() {
        Pose.Pair pair = pair("epee", THRUST, "Lean back.");
        assertTrue(lean(pair.follower()) < -10, () -> "leans by " + lean(pair.follower()));
        PosedBody stood = evaded(pair).stood();
        assertEquals(stood.front().heel(), pair.follower().front().heel());
        assertEquals(stood.rear().heel(), pair.follower().rear().heel());
    }

    @Test
    void a_leg_that_is_withdrawn_stands_by_the_other() {
        for (String answer : List.of("Withdraw the front foot.", "Evade.")) {
            Pose.Pair pair = pair("epee", "Thrust at the foot with a lunge.", answer);
            PosedBody person = pair.follower();
            double gone = evaded(pair)
                    .stood()
                    .front()
                    .toe()
                    .minus(person.front().toe())
                    .dot(person.ahead());
            assertTrue(gone > 0.35, () -> answer + " back by " + gone);
            assertTrue(person.front().heel().distance(person.rear().heel()) < 0.3);
        }
    }

    @Test
    void a_hand_that_is_withdrawn_leaves_the_body_where_it_is() {
        Pose.Pair pair = pair("epee", "Thrust at the hand with a lunge.", "Pull the hand out of the way.");
        PosedBody stood = evaded(pair).stood();
        assertEquals(stood.trunk(), pair.follower().trunk());
        double gone = stood.swordArm()
                .orElseThrow()
                .wrist()
                .distance(pair.follower().swordArm().orElseThrow().wrist());
        assertTrue(gone > 0.2, () -> "hand moved by " + gone);
    }

    /** A passata sotto is a hit made from below: upright it would be none. */
    @ParameterizedTest
    @CsvSource({"Duck and stop hit to the belly., 0.9", "Stop hit to the belly., 1.6"})
    void a_hit_out_of_an_evasion_is_made_from_there(String answer, double height) {
        Pose.Pair pair = pair("epee", THRUST, answer);
        assertTrue(pair.meeting() instanceof Meeting.Landed, pair.meeting().toString());
        double shoulders = pair.follower().trunk().shoulders().z();
        assertTrue(shoulders < height, () -> "shoulders at " + shoulders);
        assertEquals(height > 1, shoulders > 1);
    }
}
