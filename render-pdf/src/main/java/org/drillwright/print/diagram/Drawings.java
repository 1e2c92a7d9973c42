package org.drillwright.print.diagram;

import java.lang.ref.SoftReference;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.drillwright.print.diagram.stage.Drawing;
import org.drillwright.print.pose.Posing;
import org.drillwright.print.pose.Scene;

/** Drawings made lately, as long as there is room for them: many drills of a school share their counts. */
final class Drawings {

    private static final int MOST = 500;

    /** @param width in points */
    private record Wanted(Scene scene, double width) {}

    private static final Map<Wanted, SoftReference<Drawing>> LATELY = Collections.synchronizedMap(new Latest());

    private static final class Latest extends LinkedHashMap<Wanted, SoftReference<Drawing>> {

        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Wanted, SoftReference<Drawing>> eldest) {
            return size() > MOST;
        }
    }

    private Drawings() {}

    /** What a scene shows, so wide, in points. */
    static Drawing of(Scene scene, double width) {
        Wanted wanted = new Wanted(scene, width);
        return Optional.ofNullable(LATELY.get(wanted))
                .flatMap(kept -> Optional.ofNullable(kept.get()))
                .orElseGet(() -> {
                    Drawing drawing = Drawing.of(scene, Posing.of(scene), width);
                    LATELY.put(wanted, new SoftReference<>(drawing));
                    return drawing;
                });
    }
}
