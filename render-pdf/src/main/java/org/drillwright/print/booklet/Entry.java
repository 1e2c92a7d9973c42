package org.drillwright.print.booklet;

import java.util.List;
import org.drillwright.mark.PrintMark;
import org.drillwright.model.Drill;
import org.drillwright.print.frame.Frame;

/**
 * A drill of the booklet.
 *
 * @param mark of what its cards say
 * @param cards as they are printed
 */
public record Entry(Drill drill, PrintMark mark, List<Frame> cards) {

    public Entry {
        cards = List.copyOf(cards);
    }

    String title() {
        return drill.title().isBlank() ? drill.id() : drill.title();
    }
}
