package org.drillwright.print.impose;

import java.util.List;
import org.drillwright.print.frame.Box;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Quarter;

/**
 * Where one card lies on a sheet.
 *
 * @param piece what is cut out: the card, and round it what the laminate needs
 * @param card the card itself
 * @param top the side of the sheet that the card's top points to
 */
record Spot(Box piece, Box card, Quarter top) {

    /** As many as a sheet takes, in the order in which they are filled. */
    static List<Spot> all(Frame card, SheetPlan plan) {
        double gap = plan.laminate().gap();
        double between = plan.between();
        // Ink stays inside of a card that has a blank edge; the ground of one without may overrun it.
        double blank = gap + (card.clear() > 0 ? card.clear() : -plan.overrun());
        double edge = Math.max(0, Imposition.MARGIN - blank);
        return Arrangement.of(
                        card.width() + 2 * gap + between,
                        card.height() + 2 * gap + between,
                        plan.stock().width() - 2 * edge + between,
                        plan.stock().height() - 2 * edge + between)
                .shrunk(between)
                .moved(edge, edge)
                .places()
                .stream()
                .map(place -> of(place, gap))
                .toList();
    }

    private static Spot of(Arrangement.Place place, double gap) {
        Box piece = place.box();
        Box card = new Box(piece.x() + gap, piece.y() + gap, piece.width() - 2 * gap, piece.height() - 2 * gap);
        return new Spot(piece, card, place.turned() ? Quarter.LEFT : Quarter.UP);
    }
}
