package org.drillwright.print.diagram;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.drillwright.check.Subject;
import org.drillwright.model.Language;
import org.drillwright.print.Example;
import org.drillwright.print.diagram.curve.InkedArea;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Millimetres;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Rectangle;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Pictures hold on any copier: nothing but black and white, no stroke too thin, nothing outside. */
class CrispTest {

    /** Lengths are rounded to a hundredth of a point. */
    private static final double ROUNDING = 0.03;

    /** Drawn once for all tests, by width in millimetres. */
    private static final Map<Double, List<Node.Figure>> DRAWN = new HashMap<>();

    private static List<Picture> pictures;

    @BeforeAll
    static void read() {
        pictures = Example.drills().stream()
                .flatMap(drill -> Pictures.of(drill.replay(), Language.ENGLISH).stream())
                .toList();
    }

    @AfterAll
    static void letGo() {
        DRAWN.clear();
        pictures = List.of();
    }

    private static List<Node.Figure> figures(double millimetres) {
        return DRAWN.computeIfAbsent(
                millimetres,
                wide -> pictures.stream().map(picture -> draw(picture, wide)).toList());
    }

    private static Node.Figure draw(Picture picture, double millimetres) {
        return picture.draw(20, 20, Millimetres.toPoints(millimetres) * (picture.isAlone() ? 20.0 / 28 : 1));
    }

    @ParameterizedTest
    @ValueSource(doubles = {12, 21, 28, 72})
    void all_ink_is_black_or_white_and_no_stroke_thinner_than_half_a_point(double millimetres) {
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
    @ValueSource(doubles = {12, 21, 28, 72})
    void nothing_leaves_the_pictures_box(double millimetres) {
        for (Node.Figure figure : figures(millimetres)) {
            Rectangle ink = InkedArea.of(figure.marks()).box();
            assertTrue(
                    ink.x() >= -ROUNDING
                            && ink.y() >= -ROUNDING
                            && ink.right() <= figure.box().width() + ROUNDING
                            && ink.bottom() <= figure.box().height() + ROUNDING,
                    () -> ink + " leaves " + figure.box() + " of " + figure.alternative());
        }
    }

    /** The width on an A6 card: a card of three counts has no room for more. */
    @Test
    void on_a_card_no_picture_is_higher_than_it_may_be() {
        double most = Millimetres.toPoints(24) * 28 / 30;
        for (Node.Figure figure : figures(28)) {
            assertTrue(figure.box().height() <= most, () -> figure.box() + " " + figure.alternative());
        }
    }

    @Test
    void the_same_count_gives_the_same_picture() {
        Subject drill = Example.drill("counter-riposte");
        List<Picture> again = Pictures.of(drill.replay(), Language.ENGLISH);
        assertEquals(
                Pictures.of(drill.replay(), Language.ENGLISH).stream()
                        .map(picture -> draw(picture, 28))
                        .toList(),
                again.stream().map(picture -> draw(picture, 28)).toList());
    }
}
