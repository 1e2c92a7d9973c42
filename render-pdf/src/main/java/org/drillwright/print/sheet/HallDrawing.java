package org.drillwright.print.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drillwright.plan.hall.Floor;
import org.drillwright.plan.hall.LaneLayout;
import org.drillwright.plan.roster.Hall;
import org.drillwright.plan.rounds.Method;
import org.drillwright.print.frame.Box;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Millimetres;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Outline;

/**
 * The plan of a hall. In each lane a filled circle for who stands and an open one for who moves on.
 *
 * @param scale so many centimetres of the hall to one of paper
 */
record HallDrawing(Floor floor, Method method, Type type, int scale) {

    /** Between the two of a pair, in centimetres. */
    private static final int APART = 250;

    private static final double RADIUS = 3;

    static double points(int centimetres, int scale) {
        return Millimetres.toPoints(10.0 * centimetres / scale);
    }

    private double points(int centimetres) {
        return points(centimetres, scale);
    }

    Piece piece() {
        Hall hall = floor.layout().hall();
        Box box = new Box(0, 0, points(hall.length()), points(hall.width()));
        List<Mark> marks = new ArrayList<>();
        marks.add(Mark.Shape.stroked(Outline.box(box), 1.5, Ink.BLACK));
        for (int at = 0; at < floor.lanes().size(); at++) {
            lane(at, marks);
        }
        for (int at = 1; at < floor.places().size(); at++) {
            arrow(at, marks);
        }
        String said = floor.layout().sentence();
        Node figure = new Node.Figure("Plan of the hall. " + said, box, marks);
        return new Piece(box.height() + 0.8 * type.size(), List.of(), List.of(figure), true);
    }

    private void lane(int at, List<Mark> marks) {
        LaneLayout.Lane lane = floor.lanes().get(at);
        Box box = new Box(points(lane.x()), points(lane.y()), points(lane.length()), points(lane.width()));
        boolean used = at < floor.places().size();
        marks.add(
                used
                        ? new Mark.Shape(
                                Outline.box(box), Optional.of(Type.BAND), Optional.of(new Mark.Stroke(0.75, Ink.BLACK)))
                        : Mark.Shape.stroked(Outline.box(box), 0.4, Ink.BLACK));
        if (!used) {
            return;
        }
        marks.add(Mark.Shape.filled(Outline.circle(x(lane, -1), y(lane, -1), RADIUS), Ink.BLACK));
        marks.add(Mark.Shape.stroked(Outline.circle(x(lane, 1), y(lane, 1), RADIUS), 1, Ink.BLACK));
        String places = String.join(
                "/", floor.places().get(at).stream().map(String::valueOf).toList());
        double width = type.width(Face.BOLD, places);
        marks.add(new Mark.Text(
                x(lane, 0) - width / 2, y(lane, 0) - 0.25 * type.size(), type.size(), Face.BOLD, places, Ink.BLACK));
    }

    /** Along a lane: -1 where one stands, 1 where the other does, 0 between them. */
    private double x(LaneLayout.Lane lane, int end) {
        int off = lane.length() > lane.width() ? end * Math.min(APART, lane.length() - 60) / 2 : 0;
        return points(lane.x() + lane.length() / 2 + off);
    }

    private double y(LaneLayout.Lane lane, int end) {
        int off = lane.length() > lane.width() ? 0 : end * Math.min(APART, lane.width() - 60) / 2;
        return points(lane.y() + lane.width() / 2 + off);
    }

    /** How one goes from a lane to the next; only where the movement is along the places. */
    private void arrow(int at, List<Mark> marks) {
        LaneLayout.Lane low = floor.lanes().get(at - 1);
        LaneLayout.Lane high = floor.lanes().get(at);
        if (method == Method.TWO_LINES) {
            arrow(high, low, marks);
        } else if (method == Method.BLANK_RING) {
            arrow(low, high, marks);
        }
    }

    private void arrow(LaneLayout.Lane from, LaneLayout.Lane to, List<Mark> marks) {
        double dx = x(to, 1) - x(from, 1);
        double dy = y(to, 1) - y(from, 1);
        double length = Math.hypot(dx, dy);
        double ux = dx / length;
        double uy = dy / length;
        double tipX = x(to, 1) - ux * (RADIUS + 2);
        double tipY = y(to, 1) - uy * (RADIUS + 2);
        double head = 5;
        marks.add(new Mark.Line(
                x(from, 1) + ux * (RADIUS + 1), y(from, 1) + uy * (RADIUS + 1), tipX, tipY, 1, Ink.BLACK));
        marks.add(Mark.Shape.filled(
                Outline.polygon(
                        tipX,
                        tipY,
                        tipX - head * ux - 0.5 * head * uy,
                        tipY - head * uy + 0.5 * head * ux,
                        tipX - head * ux + 0.5 * head * uy,
                        tipY - head * uy - 0.5 * head * ux),
                Ink.BLACK));
    }
}
