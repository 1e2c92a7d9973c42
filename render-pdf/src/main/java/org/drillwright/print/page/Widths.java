package org.drillwright.print.page;

import java.util.ArrayList;
import java.util.List;

/** How columns share a line, in points or in any other length. */
final class Widths {

    private Widths() {}

    /**
     * Columns of which each takes what its widest word needs from those that can spare it, in proportion to what these can
     * spare. Where all have enough they stay as they are; where they need more than there is, all that can be spared is
     * shared out.
     *
     * @param widths as they are meant to be
     * @param least what the widest word of each needs
     */
    static List<Double> holding(List<Double> widths, List<Double> least) {
        double wanted = 0;
        double spare = 0;
        for (int at = 0; at < widths.size(); at++) {
            double more = least.get(at) - widths.get(at);
            wanted += Math.max(0, more);
            spare += Math.max(0, -more);
        }
        if (wanted == 0) {
            return widths;
        }
        double moved = Math.min(wanted, spare);
        List<Double> held = new ArrayList<>();
        for (int at = 0; at < widths.size(); at++) {
            double more = least.get(at) - widths.get(at);
            held.add(widths.get(at) + (more > 0 ? more * moved / wanted : spare == 0 ? 0 : more * moved / spare));
        }
        return held;
    }
}
