package org.drillwright.print.diagram.curve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Rectangle;
import org.drillwright.print.frame.Segment;
import org.junit.jupiter.api.Test;

/** Outlines by what geometry says of them. */
class TubeTest {

    private static final List<Dot> ZIGZAG =
            List.of(new Dot(0, 0), new Dot(10, 3), new Dot(14, 12), new Dot(30, 10), new Dot(31, 30));

    /** How far, of a radius, a smooth curve may leave the envelope where a side goes over into a round end. */
    private static final double BULGE = 0.06;

    private static Tube straight(double first, double second) {
        return new Tube(List.of(new Tube.Disc(new Dot(0, 0), first), new Tube.Disc(new Dot(40, 0), second)));
    }

    /** Every dot of the edge of a tube of one radius is that far from its middle line. */
    @Test
    void a_tube_of_one_radius_is_as_wide_everywhere() {
        for (Dot dot : InkedArea.dots(straight(5, 5).closed())) {
            double beyond = Math.max(0, Math.max(-dot.x(), dot.x() - 40));
            assertEquals(5, Math.hypot(beyond, dot.y()), BULGE * 5, dot.toString());
        }
    }

    /** The envelope of two discs touches both and cuts neither: no dot lies inside a disc. */
    @Test
    void a_tube_that_grows_cuts_no_disc() {
        for (Dot dot : InkedArea.dots(straight(3, 9).closed())) {
            assertTrue(dot.distance(new Dot(0, 0)) >= 3 * (1 - BULGE), dot.toString());
            assertTrue(dot.distance(new Dot(40, 0)) >= 9 * (1 - BULGE), dot.toString());
        }
        Rectangle box = InkedArea.of(List.of(Mark.Shape.filled(straight(3, 9).closed(), Ink.BLACK)))
                .box();
        assertEquals(-3, box.x(), 0.1);
        assertEquals(49, box.right(), 0.1);
        assertEquals(18, box.height(), 18 * BULGE);
    }

    @Test
    void an_open_outline_begins_where_it_is_told() {
        for (double from : new double[] {0, 7.3, 20}) {
            List<Dot> dots = InkedArea.dots(straight(4, 4).open(from));
            assertEquals(from, dots.get(0).x(), 0.05);
            assertEquals(from, dots.get(dots.size() - 1).x(), 0.05);
            assertTrue(dots.stream().allMatch(dot -> dot.x() >= from - 0.05));
        }
    }

    @Test
    void smooth_curves_go_through_their_dots() {
        List<Segment> open = Smooth.open(ZIGZAG);
        for (int at = 1; at < ZIGZAG.size(); at++) {
            Segment.Curve curve = (Segment.Curve) open.get(at);
            assertEquals(ZIGZAG.get(at), new Dot(curve.x(), curve.y()));
        }
        assertEquals(ZIGZAG.size() + 1, Smooth.closed(ZIGZAG).size());
    }

    /** Through dots on a line a smooth curve is that line. */
    @Test
    void what_is_straight_stays_straight() {
        List<Dot> line = List.of(new Dot(0, 0), new Dot(1, 2), new Dot(4, 8), new Dot(5, 10));
        for (Dot dot : InkedArea.dots(Smooth.open(line))) {
            assertEquals(2 * dot.x(), dot.y(), 1e-9);
        }
    }

    @Test
    void a_hull_holds_all_dots_and_has_no_dent() {
        List<Dot> hull = Hull.of(ZIGZAG);
        for (int at = 0; at < hull.size(); at++) {
            Dot from = hull.get(at);
            Dot to = hull.get((at + 1) % hull.size());
            for (Dot dot : ZIGZAG) {
                assertTrue(to.minus(from).turned().dot(dot.minus(from)) <= 1e-9, dot + " lies outside");
            }
        }
    }
}
