package org.drillwright.print.sheet;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;
import org.drillwright.model.Language;
import org.drillwright.plan.hall.Floor;
import org.drillwright.plan.hall.LaneLayout;
import org.drillwright.plan.roster.Hall;
import org.drillwright.plan.rounds.Method;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.drillwright.print.pdf.Family;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How one goes from lane to lane: never through somebody who stands there. */
class HallDrawingTest {

    private static final HandType TYPE = new HandType(Family.dejaVu());

    private static final int SCALE = 100;

    /** Of a circle, with the tip that ends before it, in points. */
    private static final double AT_SOMEBODY = 7;

    @ParameterizedTest
    @CsvSource({"2100, 1000, 7", "3300, 1800, 20", "1800, 1000, 6", "1000, 2100, 7", "1300, 1000, 4"})
    void no_arrow_goes_through_anybody(int length, int width, int places) {
        Floor floor = Floor.of(LaneLayout.of(Hall.of(length, width)), places);
        List<Point2D> people = new ArrayList<>();
        for (int at = 0; at < places; at++) {
            for (int end : List.of(-1, 1)) {
                people.add(person(floor.lanes().get(at), end));
            }
        }
        List<Line2D> ways = ways(floor, Method.TWO_LINES);
        assertTrue(ways.size() >= places - 1);
        for (Line2D way : ways) {
            for (Point2D person : people) {
                boolean ends = person.distance(way.getP1()) < AT_SOMEBODY || person.distance(way.getP2()) < AT_SOMEBODY;
                assertTrue(ends || way.ptSegDist(person) > 3, () -> person + " stands in the way");
            }
        }
    }

    private static List<Line2D> ways(Floor floor, Method method) {
        List<Line2D> ways = new ArrayList<>();
        double below = HallDrawing.points(floor.layout().hall().width(), SCALE);
        for (Node node : new HallDrawing(floor, method, TYPE, SCALE, HandWords.in(Language.ENGLISH))
                .block()
                .nodes()) {
            for (Mark mark : ((Node.Figure) node).marks()) {
                if (mark instanceof Mark.Line line && line.y1() < below) {
                    ways.add(new Line2D.Double(line.x1(), line.y1(), line.x2(), line.y2()));
                }
            }
        }
        return ways;
    }

    /** Two and a half metres apart, in the middle of their lane. */
    private static Point2D person(LaneLayout.Lane lane, int end) {
        boolean along = lane.length() > lane.width();
        int off = end * Math.min(250, Math.max(lane.length(), lane.width()) - 60) / 2;
        return new Point2D.Double(
                HallDrawing.points(lane.x() + lane.length() / 2 + (along ? off : 0), SCALE),
                HallDrawing.points(lane.y() + lane.width() / 2 + (along ? 0 : off), SCALE));
    }
}
