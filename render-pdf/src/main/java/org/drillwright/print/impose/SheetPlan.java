package org.drillwright.print.impose;

import java.util.Optional;
import org.drillwright.print.frame.Millimetres;

/**
 * How cards are to lie on their sheets.
 *
 * @param gutter between cards, in millimetres
 * @param bleed how far a card's ground may reach beyond its cut, in millimetres
 * @param duplex how the printer turns the sheet; nothing if only one side is printed
 * @param shift of the backs
 */
public record SheetPlan(
        Stock stock, double gutter, double bleed, Laminate laminate, Optional<Duplex> duplex, Shift shift) {

    /** Wider strips of waste between cards would be a slip of the keyboard. */
    private static final double MOST = 50;

    public SheetPlan {
        if (!(gutter >= 0 && gutter <= MOST && bleed >= 0 && bleed <= MOST)) {
            throw new IllegalArgumentException("gutter and bleed are from 0 to " + MOST + " mm");
        }
    }

    /** Cards side by side without waste, one side printed, not laminated. */
    public static SheetPlan on(Stock stock) {
        return new SheetPlan(stock, 0, 0, Laminate.NONE, Optional.empty(), Shift.NONE);
    }

    public SheetPlan withGutter(double millimetres) {
        return new SheetPlan(stock, millimetres, bleed, laminate, duplex, shift);
    }

    public SheetPlan withBleed(double millimetres) {
        return new SheetPlan(stock, gutter, millimetres, laminate, duplex, shift);
    }

    public SheetPlan with(Laminate chosen) {
        return new SheetPlan(stock, gutter, bleed, chosen, duplex, shift);
    }

    public SheetPlan with(Duplex turned, Shift backs) {
        return new SheetPlan(stock, gutter, bleed, laminate, Optional.of(turned), backs);
    }

    /** Between what is cut out of the sheet, in points: wide enough for the grounds of two neighbours. */
    double between() {
        return Math.max(Millimetres.toPoints(gutter), 2 * overrun());
    }

    /** In points. */
    double overrun() {
        return Millimetres.toPoints(bleed);
    }
}
