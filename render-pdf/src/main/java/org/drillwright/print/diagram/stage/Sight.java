package org.drillwright.print.diagram.stage;

import java.util.Optional;
import org.drillwright.model.Side;
import org.drillwright.phrase.Range;
import org.drillwright.print.pose.Meeting;
import org.drillwright.print.pose.Pose;
import org.drillwright.print.pose.Scene;

/**
 * All that a picture shows: counts that differ only in the rest have the same picture.
 *
 * @param attacked whose lines are shown, if a stroke, or a position of the hand, matters
 */
public record Sight(Pose pose, Range measure, Optional<Attacked> attacked) {

    public static Sight of(Scene scene, Pose pose) {
        Optional<Attacked> lines =
                attacked(scene, pose).flatMap(side -> scene.at(side).map(aimed -> Attacked.of(side, aimed)));
        return new Sight(pose, scene.moment().measure(), lines);
    }

    private static Optional<Side> attacked(Scene scene, Pose pose) {
        Optional<Meeting> meeting = Stage.meeting(pose);
        if (meeting.isEmpty()) {
            return Optional.of(Side.FOLLOWER);
        }
        Optional<Side> attacker = attacker(meeting.get());
        if (attacker.isPresent()) {
            return attacker.map(Side::other);
        }
        return scene.aimed().size() == 1 && pose.feet().isEmpty()
                ? scene.aimed().keySet().stream().findFirst()
                : Optional.empty();
    }

    private static Optional<Side> attacker(Meeting meeting) {
        if (meeting instanceof Meeting.Landed landed) {
            return Optional.of(landed.by());
        }
        if (meeting instanceof Meeting.Parried parried) {
            return Optional.of(parried.by());
        }
        if (meeting instanceof Meeting.FallsShort falls) {
            return Optional.of(falls.by());
        }
        if (meeting instanceof Meeting.Evaded evaded) {
            return Optional.of(evaded.by());
        }
        if (meeting instanceof Meeting.Threatens threatens) {
            return Optional.of(threatens.by());
        }
        return meeting instanceof Meeting.NotKnown unknown ? Optional.of(unknown.by()) : Optional.empty();
    }
}
