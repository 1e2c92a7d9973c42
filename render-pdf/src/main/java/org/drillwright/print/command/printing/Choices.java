package org.drillwright.print.command.printing;

import java.util.Optional;
import org.drillwright.model.CardSize;
import org.drillwright.print.impose.Duplex;
import org.drillwright.print.impose.Laminate;
import org.drillwright.print.impose.SheetPlan;
import org.drillwright.print.impose.Shift;
import org.drillwright.print.impose.Stock;
import org.drillwright.print.layout.words.Back;

/**
 * How cards are to be printed.
 *
 * @param duplex how the printer turns the sheet; a back without it is turned over the long edge
 * @param draft whether drills with errors are printed, marked
 */
public record Choices(
        CardSize size, Paper paper, Back back, Optional<Duplex> duplex, Laminate laminate, Shift shift, boolean draft) {

    /** How cards lie on their sheets; empty if each has a page of its own. */
    Optional<SheetPlan> plan() {
        return paper.sheet().map(sheet -> {
            SheetPlan plan = SheetPlan.on(Stock.of(sheet)).with(laminate);
            return back == Back.NONE ? plan : plan.with(duplex.orElse(Duplex.LONG_EDGE), shift);
        });
    }
}
