package org.drillwright.print.layout.block;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.print.frame.Role;
import org.drillwright.print.page.Box;
import org.drillwright.print.page.LineWeight;

/** Heads and counts as one table, thin rules between the counts, a heavy one behind the last. */
public final class CountTable {

    /** Above and below each count there is no more blank than this, in points, however much is to spare. */
    private static final double APART = 4;

    private final Press press;

    public CountTable(Press press) {
        this.press = press;
    }

    /** @param spare what the side does not need, in points; it goes between the counts as far as they may part */
    public Box set(Box heads, List<Box> counts, double spare) {
        if (counts.isEmpty()) {
            return press.rule(LineWeight.HEAVY);
        }
        double around = Math.max(0, Math.min(APART, spare / (2 * counts.size())));
        List<Box> pieces = new ArrayList<>(List.of(heads));
        for (int at = 0; at < counts.size(); at++) {
            pieces.add(Box.space(around));
            pieces.add(counts.get(at));
            pieces.add(Box.space(around));
            pieces.add(press.rule(at == counts.size() - 1 ? LineWeight.HEAVY : LineWeight.THIN));
        }
        return Box.stack(pieces).as(Role.TABLE);
    }
}
