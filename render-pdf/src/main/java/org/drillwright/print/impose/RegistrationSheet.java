package org.drillwright.print.impose;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Millimetres;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Quarter;
import org.drillwright.print.frame.Rectangle;

/**
 * A sheet that shows how far a printer prints backs beside their place: scales in millimetres on the front, crosses on
 * the back. Held against the light, front to the eye, each scale is crossed by a line of the back; the two numbers
 * there are the {@link Shift} that would have brought the lines to 0.
 */
public final class RegistrationSheet {

    /** How far scales reach to either side, in millimetres: as far as a shift may go. */
    private static final int REACH = (int) Shift.MOST;

    /** How far from a cross's middle the scale stands, in millimetres, so that the cross's other line is clear of it. */
    private static final double ASIDE = 9;

    private static final double NUMERAL = 6;
    private static final double THIN = 0.25;

    private final Stock stock;
    private final Duplex duplex;

    private RegistrationSheet(Stock stock, Duplex duplex) {
        this.stock = stock;
        this.duplex = duplex;
    }

    /**
     * Front and back.
     *
     * @param shift what is tried: with the right one all lines stand at 0
     * @param onFront what the front says of itself
     * @param onBack what the back says of itself
     */
    public static List<Frame> pages(Stock stock, Duplex duplex, Shift shift, Frame onFront, Frame onBack) {
        RegistrationSheet sheet = new RegistrationSheet(stock, duplex);
        List<Mark> front = new ArrayList<>();
        List<Mark> back = new ArrayList<>();
        for (Rectangle at : sheet.points()) {
            sheet.scales(at.x(), at.y(), front);
            Rectangle behind = duplex.behind(at, stock).moved(shift.right(), shift.down());
            cross(behind.x(), behind.y(), back);
        }
        return List.of(sheet.page(front, onFront), sheet.page(back, onBack));
    }

    /** A fifth from each corner, and the middle: a printer that also turns or stretches shows it by unlike numbers. */
    private List<Rectangle> points() {
        double left = stock.width() / 5;
        double top = stock.height() / 5;
        List<Rectangle> points = new ArrayList<>();
        for (double x : new double[] {left, stock.width() - left}) {
            points.add(new Rectangle(x, top, 0, 0));
            points.add(new Rectangle(x, stock.height() - top, 0, 0));
        }
        points.add(new Rectangle(stock.width() / 2, stock.height() / 2, 0, 0));
        return points;
    }

    private Frame page(List<Mark> marks, Frame note) {
        double x = (stock.width() - note.width()) / 2;
        Node.Placed placed = new Node.Placed(x, stock.height() / 3, Quarter.UP, note);
        return new Frame(stock.width(), stock.height(), Imposition.MARGIN, marks, List.of(placed));
    }

    private static void cross(double x, double y, List<Mark> marks) {
        double arm = Millimetres.toPoints(ASIDE + REACH);
        marks.add(new Mark.Line(x - arm, y, x + arm, y, THIN, Ink.BLACK));
        marks.add(new Mark.Line(x, y - arm, x, y + arm, THIN, Ink.BLACK));
    }

    /** Under the point a scale for the shift's x, beside it one for its y. */
    private void scales(double x, double y, List<Mark> marks) {
        double aside = Millimetres.toPoints(ASIDE);
        for (int at = -REACH; at <= REACH; at++) {
            boolean named = at % REACH == 0;
            double tick = Millimetres.toPoints(named ? 2.4 : 1.2);
            double onX = x + Millimetres.toPoints(rightwards() * at);
            double onY = y + Millimetres.toPoints(downwards() * at);
            marks.add(new Mark.Line(onX, y + aside, onX, y + aside + tick, THIN, Ink.BLACK));
            marks.add(new Mark.Line(x + aside, onY, x + aside + tick, onY, THIN, Ink.BLACK));
            if (named) {
                marks.add(numeral(onX - NUMERAL / 3, y + aside + tick + NUMERAL, at));
                marks.add(numeral(x + aside + tick + 1, onY + NUMERAL / 3, at));
            }
        }
        double name = aside + Millimetres.toPoints(7);
        marks.add(new Mark.Text(x, y + name, NUMERAL, Face.BOLD, "x", Ink.BLACK));
        marks.add(new Mark.Text(x + name, y, NUMERAL, Face.BOLD, "y", Ink.BLACK));
    }

    private static Mark numeral(double x, double baseline, int value) {
        String sign = value < 0 ? "\u2212" : "";
        return new Mark.Text(x, baseline, NUMERAL, Face.REGULAR, sign + Math.abs(value), Ink.BLACK);
    }

    /**
     * Which way on the front the numbers for x grow. What lands too far to the right on the back's page needs a shift
     * to the left; turned over the long edge, the back's left is the front's right.
     */
    private int rightwards() {
        return duplex == Duplex.LONG_EDGE ? 1 : -1;
    }

    private int downwards() {
        return duplex == Duplex.LONG_EDGE ? -1 : 1;
    }
}
