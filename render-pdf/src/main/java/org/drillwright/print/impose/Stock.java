package org.drillwright.print.impose;

import org.drillwright.model.SheetSize;
import org.drillwright.print.frame.Millimetres;

/**
 * The paper of a sheet, upright as it comes out of the printer.
 *
 * @param width in points
 * @param height in points
 */
public record Stock(double width, double height) {

    public static Stock of(SheetSize sheet) {
        return millimetres(sheet.width(), sheet.height());
    }

    public static Stock millimetres(double width, double height) {
        return new Stock(Millimetres.toPoints(width), Millimetres.toPoints(height));
    }
}
