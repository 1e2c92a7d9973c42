package org.drillwright.print.phone;

import java.util.List;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Outline;
import org.drillwright.print.frame.Rectangle;
import org.drillwright.print.svg.Symbols;

/** The three signs beside words: a black disc, a white one, a triangle with an exclamation mark. */
record SignIcons(String leader, String follower, String warning) {

    private static final Rectangle BOX = new Rectangle(0, 0, 10, 10);

    static SignIcons in(Symbols symbols) {
        Mark black = Mark.Shape.filled(Outline.circle(5, 5, 4.5), Ink.BLACK);
        Mark white = Mark.Shape.stroked(Outline.circle(5, 5, 3.9), 1.2, Ink.BLACK);
        List<Mark> warning = List.of(
                Mark.Shape.filled(Outline.polygon(5, 0.4, 10, 9.6, 0, 9.6), Ink.BLACK),
                Mark.Shape.filled(Outline.polygon(4.3, 3.2, 5.7, 3.2, 5.45, 6.6, 4.55, 6.6), Ink.WHITE),
                Mark.Shape.filled(Outline.circle(5, 7.9, 0.75), Ink.WHITE));
        return new SignIcons(
                symbols.sign(BOX, List.of(black), "sign"),
                symbols.sign(BOX, List.of(white), "sign"),
                symbols.sign(BOX, warning, "sign"));
    }
}
