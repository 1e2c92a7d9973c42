package org.drillwright.print.diagram;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drillwright.check.Subject;
import org.drillwright.model.Language;
import org.drillwright.print.Example;
import org.drillwright.print.frame.Box;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Millimetres;
import org.drillwright.print.frame.Node;
import org.junit.jupiter.api.Test;

/** Pictures hold on any copier: nothing but black and white, no stroke too thin, nothing outside. */
class CrispTest {

    /** The smallest size at which pictures must serve: 1 cm. */
    private static final double CENTIMETRE = Millimetres.toPoints(10);

    /** Borders are drawn on the edge: half of one may stand out. */
    private static final double HAIR = 0.3;

    private static List<Node.Figure> figures() {
        List<Node.Figure> figures = new ArrayList<>();
        for (Subject drill : Example.drills()) {
            Pictures.of(drill.replay(), Language.ENGLISH)
                    .forEach(picture -> figures.add(picture.draw(20, 20, CENTIMETRE)));
        }
        return figures;
    }

    @Test
    void allInkIsBlackOrWhite() {
        for (Node.Figure figure : figures()) {
            for (Mark mark : new Seen(figure).plain()) {
                inks(mark).forEach(ink -> assertTrue(ink.equals(Ink.BLACK) || ink.equals(Ink.WHITE), () -> "" + mark));
            }
        }
    }

    /** Half a point, 0.18 mm: four dots of a printer of 600 dots an inch. */
    @Test
    void noStrokeIsThinnerThanHalfAPoint() {
        for (Node.Figure figure : figures()) {
            for (Mark mark : new Seen(figure).plain()) {
                width(mark).ifPresent(width -> assertTrue(width >= 0.5, () -> "" + mark));
            }
        }
    }

    @Test
    void nothingLeavesThePicturesBox() {
        for (Node.Figure figure : figures()) {
            Box box = figure.box();
            assertEquals(CENTIMETRE, box.width(), 1e-9);
            for (Mark mark : new Seen(figure).plain()) {
                Box covered = Seen.box(mark);
                double across = width(mark).orElse(0.0) / 2 * (mark instanceof Mark.Line line ? share(line, true) : 1);
                double along = width(mark).orElse(0.0) / 2 * (mark instanceof Mark.Line line ? share(line, false) : 1);
                assertTrue(
                        covered.x() - across >= box.x() - HAIR
                                && covered.right() + across <= box.right() + HAIR
                                && covered.y() - along >= box.y() - HAIR
                                && covered.bottom() + along <= box.bottom() + HAIR,
                        () -> mark + " leaves " + box + " of " + figure.alternative());
            }
        }
    }

    /** How much of a stroke's width lies across or along the page: its ends are cut square. */
    private static double share(Mark.Line line, boolean across) {
        double length = Math.hypot(line.x2() - line.x1(), line.y2() - line.y1());
        return Math.abs(across ? line.y2() - line.y1() : line.x2() - line.x1()) / length;
    }

    private static List<Ink> inks(Mark mark) {
        List<Ink> inks = new ArrayList<>();
        if (mark instanceof Mark.Line line) {
            inks.add(line.ink());
        } else if (mark instanceof Mark.Text text) {
            inks.add(text.ink());
        } else if (mark instanceof Mark.Shape shape) {
            shape.fill().ifPresent(inks::add);
            shape.stroke().map(Mark.Stroke::ink).ifPresent(inks::add);
        }
        return inks;
    }

    private static Optional<Double> width(Mark mark) {
        if (mark instanceof Mark.Line line) {
            return Optional.of(line.width());
        }
        return mark instanceof Mark.Shape shape ? shape.stroke().map(Mark.Stroke::width) : Optional.empty();
    }
}
