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
                double half = width(mark).orElse(0.0) / 2;
                assertTrue(
                        covered.x() - half >= box.x() - 0.3
                                && covered.right() + half <= box.right() + 0.3
                                && covered.y() - half >= box.y() - 0.3
                                && covered.bottom() + half <= box.bottom() + 0.3,
                        () -> mark + " leaves " + box + " of " + figure.alternative());
            }
        }
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
