package org.drillwright.print.layout.block;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Outline;
import org.drillwright.print.frame.Rectangle;
import org.drillwright.print.layout.fit.Scale;
import org.drillwright.print.page.Type;

/**
 * The signs of a card: a black disc is the leader, a white one the follower, a triangle is safety. Each is told by its
 * shape on any photocopy. They hang before the words of a line.
 */
public final class Sign {

    /** A disc's diameter, as a share of the type size. */
    private static final double DISC = 0.72;

    /** The ring of the white disc, as a share of the type size. */
    private static final double RING = 0.13;

    /** The height of small letters, as a share of that of capitals. */
    private static final double SMALL_LETTERS = 0.75;

    private static final double SIDE = 0.92;
    private static final double HEIGHT = 0.8;

    /** As a share of the leading of the lines that it stands before. */
    private static final double MOST = 1.1;

    private static final double HOLE_LINE = 0.3;

    private Sign() {}

    /** A place where a sign hangs: the left edge of discs, the line's baseline, the height of its capitals. */
    public record Place(double x, double baseline, double capitals) {

        /** Before the first line of a column whose top is there. */
        public static Place before(Type type, double x, double top) {
            return new Place(x, type.baseline(top), type.capHeight());
        }
    }

    public static List<Mark> leader(Place place, double size) {
        double radius = DISC * size / 2;
        return List.of(Mark.Shape.filled(Outline.circle(place.x() + radius, middle(place), radius), Ink.BLACK));
    }

    public static List<Mark> follower(Place place, double size) {
        double radius = DISC * size / 2;
        double ring = RING * size;
        return List.of(Mark.Shape.stroked(
                Outline.circle(place.x() + radius, middle(place), radius - ring / 2), ring, Ink.BLACK));
    }

    /** The middle of the small letters. */
    private static double middle(Place place) {
        return place.baseline() - SMALL_LETTERS * place.capitals() / 2;
    }

    /** Before small lines in the size of the turns, where the lines leave room for it; its middle under that of discs. */
    static List<Mark> safety(Place place, Scale scale) {
        double turns = scale.turns().size();
        double size = Math.min(turns, MOST * scale.small().leading());
        return safety(new Place(place.x() + DISC * (turns - size) / 2, place.baseline(), place.capitals()), size);
    }

    public static List<Mark> safety(Place place, double size) {
        double middle = place.x() + DISC * size / 2;
        double side = SIDE * size;
        double height = HEIGHT * size;
        double base = place.baseline() + (height - place.capitals()) / 2;
        double stroke = 0.13 * size;
        double dot = stroke / 2;
        List<Mark> marks = new ArrayList<>();
        marks.add(Mark.Shape.filled(
                Outline.polygon(middle - side / 2, base, middle + side / 2, base, middle, base - height), Ink.BLACK));
        marks.add(Mark.Shape.filled(
                Outline.box(new Rectangle(middle - dot, base - 0.66 * height, stroke, 0.34 * height)), Ink.WHITE));
        marks.add(Mark.Shape.filled(
                Outline.box(new Rectangle(middle - dot, base - 0.24 * height, stroke, stroke)), Ink.WHITE));
        return marks;
    }

    /** Where to punch. */
    static Mark hole(Rectangle hole) {
        double radius = hole.width() / 2;
        return Mark.Shape.stroked(
                Outline.circle(hole.x() + radius, hole.y() + radius, radius - HOLE_LINE / 2), HOLE_LINE, Ink.BLACK);
    }
}
