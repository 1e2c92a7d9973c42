package org.drillwright.print.diagram;

import org.drillwright.print.diagram.stage.Drawing;
import org.drillwright.print.pose.Posing;
import org.drillwright.print.pose.RecentCache;
import org.drillwright.print.pose.Scene;

/** Drawings made lately: many drills of a school share their counts, and counts that differ may look the same. */
final class Drawings {

    private static final int MOST = 500;

    /** @param width in points */
    private record Wanted(Scene scene, double width) {}

    private static final RecentCache<Wanted, Drawing> LATELY = new RecentCache<>(MOST);

    private static final RecentCache<Drawing, Drawing> ALIKE = new RecentCache<>(MOST);

    private Drawings() {}

    /** What a scene shows, so wide, in points. */
    static Drawing of(Scene scene, double width) {
        return LATELY.of(new Wanted(scene, width), () -> {
            Drawing drawing = Drawing.of(scene, Posing.of(scene), width);
            return ALIKE.of(drawing, () -> drawing);
        });
    }
}
