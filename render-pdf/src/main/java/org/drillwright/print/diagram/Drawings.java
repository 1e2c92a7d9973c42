package org.drillwright.print.diagram;

import org.drillwright.print.diagram.stage.Drawing;
import org.drillwright.print.diagram.stage.Sight;
import org.drillwright.print.pose.Pose;
import org.drillwright.print.pose.RecentCache;
import org.drillwright.print.pose.Scene;

/** Drawings made lately: many drills of a school share their counts, and counts that differ may look the same. */
final class Drawings {

    private static final int MOST = 500;

    /** @param width in points */
    private record Wanted(Sight sight, double width) {}

    private static final RecentCache<Wanted, Drawing> LATELY = new RecentCache<>(MOST);

    private static final RecentCache<Drawing, Drawing> ALIKE = new RecentCache<>(MOST);

    private Drawings() {}

    /** What a scene shows, so wide, in points. */
    static Drawing of(Scene scene, Pose pose, double width) {
        Sight sight = Sight.of(scene, pose);
        return LATELY.of(new Wanted(sight, width), () -> {
            Drawing drawing = Drawing.of(sight, width);
            return ALIKE.of(drawing, () -> drawing);
        });
    }
}
