package org.drillwright.print.page;

import java.util.List;
import org.drillwright.model.SheetSize;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Millimetres;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Role;

/**
 * A page and its margin, in points.
 *
 * @param margin on all sides
 */
public record Sheet(double width, double height, double margin) {

    /** Wide enough for any office printer. */
    public static final double NARROW = Millimetres.toPoints(10);

    /** The same for what is held in the hand. */
    public static final double HELD = Millimetres.toPoints(12);

    /** The same with room for a staple. */
    public static final double STAPLED = Millimetres.toPoints(15);

    public static Sheet upright(SheetSize size, double margin) {
        return new Sheet(Millimetres.toPoints(size.width()), Millimetres.toPoints(size.height()), margin);
    }

    public static Sheet lying(SheetSize size, double margin) {
        return new Sheet(Millimetres.toPoints(size.height()), Millimetres.toPoints(size.width()), margin);
    }

    /** How much larger the paper is than A4, seen from farther; 1 where it is not. */
    public static double enlarged(SheetSize size) {
        return Math.max(1, size.width() / SheetSize.A4.width() - 0.05);
    }

    /** Between the margins. */
    public double inner() {
        return width - 2 * margin;
    }

    public double bottom() {
        return height - margin;
    }

    /** What is left of a page over its foot. */
    public double room(Box foot) {
        return bottom() - margin - foot.height();
    }

    /** What stands on a page from its top margin on, and its foot at the bottom. */
    public Frame page(Box body, Box foot) {
        Box all = Box.abreast(List.of(body.moved(margin, margin), foot.moved(margin, bottom() - foot.height())));
        return new Frame(width, height, margin, all.marks(), List.of(new Node.Group(Role.CARD, all.nodes())));
    }

    /** A page on which nothing stands. */
    public Frame blank() {
        return new Frame(width, height, margin, List.of(), List.of());
    }
}
