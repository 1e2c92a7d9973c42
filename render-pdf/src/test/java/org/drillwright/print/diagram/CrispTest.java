package org.drillwright.print.diagram;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.check.Subject;
import org.drillwright.model.Language;
import org.drillwright.print.Example;
import org.drillwright.print.diagram.curve.Cover;
import org.drillwright.print.frame.Box;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Millimetres;
import org.drillwright.print.frame.Node;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Pictures hold on any copier: nothing but black and white, no stroke too thin, nothing outside. */
class CrispTest {

    /** Lengths are rounded to a hundredth of a point. */
    private static final double ROUNDING = 0.03;

    private static List<Node.Figure> figures(double millimetres) {
        List<Node.Figure> figures = new ArrayList<>();
        for (Subject drill : Example.drills()) {
            for (Picture picture : Pictures.of(drill.replay(), Language.ENGLISH)) {
                double width = Millimetres.toPoints(millimetres) * (picture.isAlone() ? 20.0 / 28 : 1);
                figures.add(picture.draw(20, 20, width));
            }
        }
        return figures;
    }

    @ParameterizedTest
    @ValueSource(doubles = {12, 21, 28, 30, 48, 72})
    void allInkIsBlackOrWhiteAndNoStrokeThinnerThanHalfAPoint(double millimetres) {
        for (Node.Figure figure : figures(millimetres)) {
            for (Mark mark : new Seen(figure).plain()) {
                assertTrue(
                        Seen.inks(mark).stream().allMatch(ink -> ink.equals(Ink.BLACK) || ink.equals(Ink.WHITE)),
                        mark::toString);
                assertTrue(!(mark instanceof Mark.Text), "no font is needed");
                Seen.blackStroke(mark).ifPresent(width -> assertTrue(width >= 0.5, mark::toString));
            }
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {12, 21, 28, 30, 48, 72})
    void nothingLeavesThePicturesBox(double millimetres) {
        for (Node.Figure figure : figures(millimetres)) {
            Box ink = Cover.of(figure.marks()).box();
            assertTrue(
                    ink.x() >= -ROUNDING
                            && ink.y() >= -ROUNDING
                            && ink.right() <= figure.box().width() + ROUNDING
                            && ink.bottom() <= figure.box().height() + ROUNDING,
                    () -> ink + " leaves " + figure.box() + " of " + figure.alternative());
        }
    }

    /** Sizes by which cards are laid: an A6 card of three counts has no room for more. */
    @ParameterizedTest
    @ValueSource(doubles = {28, 30})
    void onACardNoPictureIsHigherThanItMayBe(double millimetres) {
        double most = Millimetres.toPoints(24) * millimetres / 30;
        for (Node.Figure figure : figures(millimetres)) {
            assertTrue(figure.box().height() <= most, () -> figure.box() + " " + figure.alternative());
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {28})
    void theSameCountGivesTheSamePicture(double millimetres) {
        assertEquals(figures(millimetres), figures(millimetres));
    }
}
