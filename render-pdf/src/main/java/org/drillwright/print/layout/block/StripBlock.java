package org.drillwright.print.layout.block;

import java.util.List;
import org.drillwright.print.frame.Box;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Outline;
import org.drillwright.print.frame.Role;
import org.drillwright.print.layout.fit.CardArea;
import org.drillwright.print.layout.fit.Columns;
import org.drillwright.print.text.Paragraph;

/** The gear, on a band across the card. */
public final class StripBlock {

    private final Press press;

    public StripBlock(Press press) {
        this.press = press;
    }

    public Slab set(Paragraph gear) {
        if (gear.isEmpty()) {
            return Slab.NONE;
        }
        CardArea area = press.area();
        double size = press.scale().cue();
        double inside = Columns.inset(press.scale());
        double pad = 0.22 * size;
        Setting set = press.set(gear, size, area.left() + inside, pad, area.inner() - 2 * inside);
        double height = set.height() + 2 * pad;
        Mark band = Mark.Shape.filled(Outline.box(new Box(area.left(), 0, area.inner(), height)), Press.BAND);
        return new Slab(height, List.of(band), List.of(new Node.Words(Role.PARAGRAPH, set.lines())), set.broken());
    }
}
