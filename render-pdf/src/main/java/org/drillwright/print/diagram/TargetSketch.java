package org.drillwright.print.diagram;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.drillwright.notation.Line;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.pose.Aimed;
import org.drillwright.print.pose.Closing;
import org.drillwright.print.pose.Threat;

/**
 * Draws the lines of one of the two: a line that is closed is hatched behind a thick wall, a stroke into a line is a
 * dot, a threat that means no touch a ring, what is not known a question mark.
 */
final class TargetSketch {

    /** Names of what is drawn, for who reads the marks. */
    static final String LINE = "line ";

    static final String CLOSED = "closed";
    static final String STROKE = "stroke";
    static final String FEINT = "feint";
    static final String UNKNOWN = "unknown";
    static final String UNKNOWN_STROKE = "unknown stroke";
    static final String ROUND = "carried round";

    private static final double BORDER = 1.8;
    private static final double WALL = 4.6;
    private static final double HATCH = 1.5;
    private static final double BETWEEN = 4.4;

    private final Pad pad;
    private final boolean sabre;
    private final List<Mark> marks = new ArrayList<>();

    private TargetSketch(Pad pad, boolean sabre) {
        this.pad = pad;
        this.sabre = sabre;
    }

    static List<Mark> draw(Aimed aimed, boolean sabre, Pad pad) {
        TargetSketch sketch = new TargetSketch(pad, sabre);
        sketch.closed(aimed.closing().closed());
        sketch.grid(aimed.closing().known());
        sketch.doubts(aimed.closing().doubtful());
        sketch.threat(aimed);
        return sketch.marks;
    }

    private void grid(boolean known) {
        for (Map.Entry<Line, Area> line : Target.areas(sabre).entrySet()) {
            Area at = line.getValue();
            List<Mark> border = new ArrayList<>();
            if (known) {
                border.add(pad.outlined(BORDER, at.corners()));
            } else {
                border.addAll(pad.dashes(at.left(), at.top(), at.right(), at.top(), BORDER, 3));
                border.addAll(pad.dashes(at.right(), at.top(), at.right(), at.bottom(), BORDER, 3));
                border.addAll(pad.dashes(at.left(), at.bottom(), at.right(), at.bottom(), BORDER, 3));
                border.addAll(pad.dashes(at.left(), at.top(), at.left(), at.bottom(), BORDER, 3));
            }
            marks.add(new Mark.Named(LINE + line.getKey().words(), border));
        }
    }

    private void closed(Set<Line> lines) {
        Target.areas(sabre).forEach((line, area) -> {
            if (lines.contains(line)) {
                List<Mark> shut = new ArrayList<>(hatch(area));
                shut.addAll(wall(area));
                marks.add(new Mark.Named(CLOSED, shut));
            }
        });
    }

    /** Strokes that rise to the right, clipped to the area. */
    private List<Mark> hatch(Area at) {
        List<Mark> strokes = new ArrayList<>();
        double least = at.left() + at.top();
        double most = at.right() + at.bottom();
        for (double sum = least + BETWEEN / 2; sum < most; sum += BETWEEN) {
            double x1 = Math.max(at.left(), sum - at.bottom());
            double x2 = Math.min(at.right(), sum - at.top());
            if (x2 - x1 > 0.5) {
                strokes.add(pad.line(x1, sum - x1, x2, sum - x2, HATCH));
            }
        }
        return strokes;
    }

    /** Along the edges that look away from the middle of the target. */
    private List<Mark> wall(Area at) {
        double half = WALL / 2;
        boolean left = at.middleX() < Target.SIZE / 2;
        boolean top = at.middleY() < Target.SIZE / 2;
        double upright = left ? at.left() + half : at.right() - half;
        double level = top ? at.top() + half : at.bottom() - half;
        return List.of(
                pad.line(upright, at.top(), upright, at.bottom(), WALL),
                pad.line(at.left(), level, at.right(), level, WALL));
    }

    private void doubts(Set<Line> lines) {
        Target.areas(sabre).forEach((line, at) -> {
            if (lines.contains(line)) {
                marks.add(new Mark.Named(UNKNOWN, List.of(pad.question(at.middleX(), at.middleY(), 9))));
            }
        });
    }

    private void threat(Aimed aimed) {
        if (!aimed.known()) {
            question();
        }
        aimed.threat().ifPresent(threat -> {
            threat.shown().flatMap(line -> Target.area(sabre, line)).ifPresent(at -> marks.add(feint(at)));
            threat.line()
                    .value()
                    .flatMap(line -> Target.area(sabre, line))
                    .ifPresentOrElse(at -> marks.add(threat.attack().meant() ? stroke(at) : feint(at)), this::question);
            if (aimed.carriedRound()) {
                round(threat, aimed.closing());
            }
        });
    }

    private Mark stroke(Area at) {
        double size = Math.min(6, (at.right() - at.left()) * 0.36);
        return new Mark.Named(
                STROKE,
                List.of(
                        pad.disc(at.middleX(), at.middleY(), size + 2.2, Ink.WHITE),
                        pad.disc(at.middleX(), at.middleY(), size, Ink.BLACK)));
    }

    private Mark feint(Area at) {
        double size = Math.min(5, (at.right() - at.left()) * 0.3);
        return new Mark.Named(
                FEINT,
                List.of(
                        pad.disc(at.middleX(), at.middleY(), size + 3, Ink.WHITE),
                        pad.ring(at.middleX(), at.middleY(), size, 2)));
    }

    private void question() {
        double middle = Target.SIZE / 2;
        marks.add(new Mark.Named(
                UNKNOWN_STROKE, List.of(pad.disc(middle, middle, 10, Ink.WHITE), pad.question(middle, middle, 15))));
    }

    /** From the line attacked to the line that the hand closes. */
    private void round(Threat threat, Closing closing) {
        threat.line()
                .value()
                .flatMap(line -> Target.area(sabre, line))
                .ifPresent(from -> closing.closed().stream()
                        .sorted()
                        .findFirst()
                        .flatMap(line -> Target.area(sabre, line))
                        .ifPresent(to -> marks.add(new Mark.Named(ROUND, Arrow.between(pad, from, to)))));
    }
}
