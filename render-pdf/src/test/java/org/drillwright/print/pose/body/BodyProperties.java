package org.drillwright.print.pose.body;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.drillwright.model.Side;

/** Wherever a hand or a point is sent, arms and blades stay as long as they are. */
class BodyProperties {

    private static final double MILLIMETRE = 0.001;

    @Property
    void an_arm_keeps_its_bones_wherever_the_hand_is_sent(
            @ForAll @DoubleRange(min = -1, max = 1) double ahead,
            @ForAll @DoubleRange(min = -1, max = 1) double outside,
            @ForAll @DoubleRange(min = 0.1, max = 1) double up) {
        Body body = new Body(Axes.of(Side.LEADER, false, 0), Posture.ON_GUARD);
        Arm arm = body.swordArm(body.swordShoulder().plus(new Point(ahead, outside, up)));
        assertEquals(Proportions.UPPER_ARM, arm.shoulder().distance(arm.elbow()), MILLIMETRE);
        assertEquals(Proportions.FOREARM, arm.elbow().distance(arm.wrist()), MILLIMETRE);
    }

    @Property
    void a_blade_keeps_its_length_however_it_bends(
            @ForAll @DoubleRange(min = 0.78, max = 1.2) double chord,
            @ForAll @DoubleRange(min = -0.5, max = 0.5) double aside,
            @ForAll @DoubleRange(min = -0.5, max = 0.5) double up) {
        Point bell = new Point(0.3, 0.1, 1.2);
        Point tip = bell.plus(new Point(1, aside, up).unit().times(chord));
        Blade blade = Blade.bent(bell, tip, 0.90);
        assertEquals(0.90, blade.length(), MILLIMETRE);
        assertTrue(chord > 0.90 || blade.tip().distance(tip) < MILLIMETRE);
    }

    /** The nearest edge is never farther than any of its parts: a joint is covered. */
    @Property
    void a_silhouette_covers_every_joint(@ForAll @DoubleRange(min = -8, max = 14) double lean) {
        Camera camera = Camera.oblique();
        Body body = new Body(Axes.of(Side.FOLLOWER, true, 0.4), Posture.LUNGE.leaning(lean));
        Arm arm = body.swordArm(body.swordShoulder().plus(new Point(-0.4, 0, -0.2)));
        PosedBody person = new PosedBody(
                Side.FOLLOWER,
                true,
                body.axes().ahead(),
                body.axes().outside(),
                body.torso(),
                body.head(true),
                body.front(),
                body.rear(),
                Optional.of(arm),
                body.rearArm(RearHand.BACK),
                Optional.empty(),
                false,
                true);
        Silhouette silhouette = Silhouette.of(person, camera);
        for (Point joint : List.of(
                person.front().knee(),
                person.rear().knee(),
                arm.elbow(),
                person.head().centre(),
                body.torso().pelvis())) {
            assertTrue(silhouette.distance(joint) < 0);
        }
    }
}
