package org.drillwright.print.impose;

import org.drillwright.print.frame.Quarter;
import org.drillwright.print.frame.Rectangle;

/** How a printer turns an upright sheet over to print its back. */
public enum Duplex {
    /** About the long edge, as a page of a book is turned: left and right change places. */
    LONG_EDGE,
    /** About the short edge, as a page of a wall calendar is turned: top and bottom change places. */
    SHORT_EDGE;

    /** Where on the back's page that is which lies behind a place on the front. */
    Rectangle behind(Rectangle front, Stock stock) {
        return switch (this) {
            case LONG_EDGE -> new Rectangle(stock.width() - front.right(), front.y(), front.width(), front.height());
            case SHORT_EDGE -> new Rectangle(front.x(), stock.height() - front.bottom(), front.width(), front.height());
        };
    }

    /**
     * Where the top of a card's back points to on the back's page so that it is behind the top of its front: a card in
     * the hand is turned over as a page of a book.
     */
    Quarter behind(Quarter front) {
        return switch (this) {
            case LONG_EDGE -> front.onItsSide() ? opposite(front) : front;
            case SHORT_EDGE -> front.onItsSide() ? front : opposite(front);
        };
    }

    private static Quarter opposite(Quarter top) {
        return switch (top) {
            case UP -> Quarter.DOWN;
            case LEFT -> Quarter.RIGHT;
            case DOWN -> Quarter.UP;
            case RIGHT -> Quarter.LEFT;
        };
    }
}
