package org.drillwright.print.impose;

import java.util.List;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Quarter;
import org.drillwright.print.frame.Rectangle;

/**
 * Where one card lies on a sheet.
 *
 * @param top the side of the sheet that the card's top points to
 */
record CardSlot(Rectangle card, Quarter top) {

    /** As many as a sheet takes, in the order in which they are filled. */
    static List<CardSlot> all(Frame card, SheetPlan plan) {
        double between = plan.between();
        // Ink stays inside of a card that has a blank edge; the ground of one without may overrun it.
        double blank = card.clear() > 0 ? card.clear() : -plan.overrun();
        double edge = Math.max(0, Imposition.MARGIN - blank);
        return Arrangement.of(
                        card.width() + between,
                        card.height() + between,
                        plan.stock().width() - 2 * edge + between,
                        plan.stock().height() - 2 * edge + between)
                .shrunk(between)
                .moved(edge, edge)
                .places()
                .stream()
                .map(place -> new CardSlot(place.box(), place.turned() ? Quarter.LEFT : Quarter.UP))
                .toList();
    }
}
