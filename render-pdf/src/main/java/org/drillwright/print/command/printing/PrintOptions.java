package org.drillwright.print.command.printing;

import java.util.Optional;
import org.drillwright.model.CardSize;
import org.drillwright.print.impose.Duplex;
import org.drillwright.print.impose.Laminate;
import org.drillwright.print.impose.SheetPlan;
import org.drillwright.print.impose.Shift;
import org.drillwright.print.impose.Stock;
import org.drillwright.print.layout.fit.Format;
import org.drillwright.print.layout.words.Back;

/**
 * How cards are to be printed.
 *
 * @param format of the cards
 * @param duplex how the printer turns the sheet; a back without it is turned over the long edge
 * @param draft whether drills with errors are printed, marked
 */
public record PrintOptions(
        Format format,
        PaperChoice paper,
        Back back,
        Optional<Duplex> duplex,
        Laminate laminate,
        Shift shift,
        boolean draft) {

    public CardSize size() {
        return format.size();
    }

    /** How cards lie on their sheets, some of them printed on both sides or none; empty if each has a page of its own. */
    Optional<SheetPlan> plan(boolean bothSides) {
        return paper.sheet().map(sheet -> {
            SheetPlan plan = SheetPlan.on(Stock.of(sheet)).with(laminate);
            return bothSides ? plan.with(duplex.orElse(Duplex.LONG_EDGE), shift) : plan;
        });
    }
}
