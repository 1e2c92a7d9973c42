package org.drillwright.print.frame;

/** An upright rectangle, in points, from its top left corner. */
public record Rectangle(double x, double y, double width, double height) {

    public double right() {
        return x + width;
    }

    public double bottom() {
        return y + height;
    }

    public Rectangle moved(double dx, double dy) {
        return new Rectangle(x + dx, y + dy, width, height);
    }
}
