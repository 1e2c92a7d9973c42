package org.drillwright.print.pose;

import java.util.List;
import java.util.Optional;
import org.drillwright.model.Weapon;
import org.drillwright.print.pose.body.Point;
import org.drillwright.print.pose.body.PosedBody;

/** Who stands where, in the moment that the picture of a count shows. */
public sealed interface Pose {

    Weapon weapon();

    /** The ways of points and edges that led to this moment. */
    List<Trajectory> ways();

    /** What the feet did in the count. */
    List<FootMove> feet();

    /**
     * Two, opposite each other.
     *
     * @param measure from front toe to front toe as they stand here, in metres; true to scale but out of distance and
     *     where it is not known
     */
    record Pair(
            Weapon weapon,
            PosedBody leader,
            PosedBody follower,
            double measure,
            Meeting meeting,
            List<Trajectory> ways,
            List<FootMove> feet)
            implements Pose {
        public Pair {
            ways = List.copyOf(ways);
            feet = List.copyOf(feet);
        }
    }

    /**
     * The follower, and nobody opposite.
     *
     * @param pad the foot of the pad that stands opposite, if one does
     * @param hit where a stroke meets the pad, if one does
     */
    record Alone(
            Weapon weapon,
            PosedBody person,
            Optional<Point> pad,
            Optional<Point> hit,
            List<Trajectory> ways,
            List<FootMove> feet)
            implements Pose {
        public Alone {
            ways = List.copyOf(ways);
            feet = List.copyOf(feet);
        }
    }
}
