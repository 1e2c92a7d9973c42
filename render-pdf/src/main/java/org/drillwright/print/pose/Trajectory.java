package org.drillwright.print.pose;

import java.util.List;
import org.drillwright.model.Side;
import org.drillwright.print.pose.body.Point;

/**
 * The way that a point or an edge has gone.
 *
 * @param points from its beginning to its end
 */
public record Trajectory(Side by, Kind kind, List<Point> points) {

    /** How it goes. */
    public enum Kind {
        /** Under the partner's hand. */
        DISENGAGE,
        /** Over the partner's point. */
        CUT_OVER,
        /** All round the partner's blade. */
        CIRCULAR,
        /** With the edge. */
        CUT
    }

    public Trajectory {
        points = List.copyOf(points);
    }
}
