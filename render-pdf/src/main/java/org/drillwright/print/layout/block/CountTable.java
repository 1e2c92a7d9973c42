package org.drillwright.print.layout.block;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Role;
import org.drillwright.print.layout.fit.CardArea;

/** Heads and counts as one table, with rules between the counts; spare room is given to all alike. */
public final class CountTable {

    /** Counts are not drawn farther apart than this, as a share of the type size. */
    private static final double APART = 1.1;

    private final Press press;

    public CountTable(Press press) {
        this.press = press;
    }

    public Slab set(Slab heads, List<Slab> counts, double room) {
        if (counts.isEmpty()) {
            return Slab.NONE;
        }
        double needed =
                heads.height() + counts.stream().mapToDouble(Slab::height).sum();
        double spare = Math.max(0, Math.min(APART * press.scale().turn(), (room - needed) / counts.size()));
        List<Slab> pieces = new ArrayList<>(List.of(heads));
        for (int at = 0; at < counts.size(); at++) {
            boolean last = at == counts.size() - 1;
            pieces.add(Slab.space(spare / 2));
            pieces.add(counts.get(at));
            pieces.add(Slab.space(spare / 2));
            pieces.add(rule(last ? 1 : 0.5));
        }
        Slab stacked = Slab.stack(pieces);
        return new Slab(
                stacked.height(),
                stacked.backdrop(),
                List.of(new Node.Group(Role.TABLE, stacked.content())),
                stacked.broken());
    }

    private Slab rule(double width) {
        CardArea area = press.area();
        Mark rule = new Mark.Line(area.left(), 0, area.right(), 0, width, Ink.BLACK);
        return new Slab(0, List.of(rule), List.of(), List.of());
    }
}
