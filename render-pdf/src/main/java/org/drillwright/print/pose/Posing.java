package org.drillwright.print.pose;

import java.util.List;
import java.util.Optional;
import org.drillwright.model.Side;
import org.drillwright.notation.Position;
import org.drillwright.phrase.Fencer;
import org.drillwright.print.pose.body.Axes;
import org.drillwright.print.pose.body.Blade;
import org.drillwright.print.pose.body.Body;
import org.drillwright.print.pose.body.Hold;
import org.drillwright.print.pose.body.Person;
import org.drillwright.print.pose.body.Point;
import org.drillwright.print.pose.body.Posture;
import org.drillwright.print.pose.body.RearHand;

/** Poses the two as the count left them. */
public final class Posing {

    private final Scene scene;

    private Posing(Scene scene) {
        this.scene = scene;
    }

    /** Who stands how at the end of the last stroke of a count, or at its end if there was none. */
    public static Pose of(Scene scene) {
        return new Posing(scene).pose();
    }

    private Pose pose() {
        if (!scene.partner()) {
            return new Pose.Alone(
                    scene.weapon(),
                    person(Side.FOLLOWER, 0, scene.end().follower()),
                    Optional.empty(),
                    Optional.empty(),
                    List.of(),
                    List.of());
        }
        double measure = Distance.of(scene.end().measure());
        return new Pose.Pair(
                scene.weapon(),
                person(Side.LEADER, -measure / 2, scene.end().leader()),
                person(Side.FOLLOWER, measure / 2, scene.end().follower()),
                measure,
                new Meeting.Apart(),
                List.of(),
                List.of());
    }

    private Person person(Side side, double toe, Fencer fencer) {
        Axes axes = Axes.of(side, false, toe);
        Posture posture = Posture.ON_GUARD;
        Body body = new Body(axes, posture);
        Hold hold = Holds.guard(scene.weapon(), fencer.hand().value().orElse(Position.SIXTE));
        Point wrist = body.wrist(hold);
        Point along = body.direction(hold);
        Point bell = wrist.plus(along.times(Arms.GRIP));
        return new Person(
                side,
                false,
                axes.ahead(),
                axes.outside(),
                body.torso(),
                body.head(true),
                body.front(),
                body.rear(),
                Optional.of(body.swordArm(wrist)),
                body.rearArm(RearHand.UP),
                Optional.of(Blade.straight(bell, bell.plus(along.times(Arms.blade(scene.weapon()))))),
                true);
    }
}
