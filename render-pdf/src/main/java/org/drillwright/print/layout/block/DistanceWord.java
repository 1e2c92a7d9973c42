package org.drillwright.print.layout.block;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Segment;
import org.drillwright.print.layout.fit.Grid;
import org.drillwright.print.layout.words.CardText;
import org.drillwright.print.page.SetText;

/**
 * The distance under the picture of a count: in the middle under arrow and bar if it is the one at which the count
 * begins, for the two are just as long, and under the bar alone if it is the one at which it ends; never out of its
 * column.
 */
final class DistanceWord {

    private static final String BAR = "measure";

    private static final String ARROW = "feet of the ";

    private DistanceWord() {}

    /** @param top of its first line, in points */
    static SetText set(CardText.Count count, Optional<Node.Figure> picture, double top, Press press) {
        Grid grid = press.grid();
        double middle =
                picture.flatMap(figure -> middle(figure, count.ends())).orElse(grid.pictures() + grid.picture() / 2);
        return press.small().about(middle, count.distance(), grid.pictures(), top, grid.picture());
    }

    /** From the left edge of the paper; nothing if two do not stand there. */
    private static Optional<Double> middle(Node.Figure figure, boolean barAlone) {
        List<Double> bar = new ArrayList<>();
        List<Double> arrows = new ArrayList<>();
        for (Mark mark : figure.marks()) {
            if (mark instanceof Mark.Named named && named.name().equals(BAR)) {
                named.marks().forEach(part -> collect(part, bar));
            } else if (mark instanceof Mark.Named named && named.name().startsWith(ARROW)) {
                named.marks().forEach(part -> collect(part, arrows));
            }
        }
        if (bar.isEmpty()) {
            return Optional.empty();
        }
        if (!barAlone) {
            bar.addAll(arrows);
        }
        double left = bar.stream().mapToDouble(Double::doubleValue).min().orElseThrow();
        double right = bar.stream().mapToDouble(Double::doubleValue).max().orElseThrow();
        return Optional.of(figure.box().x() + (left + right) / 2);
    }

    private static void collect(Mark mark, List<Double> across) {
        if (mark instanceof Mark.Line line) {
            across.addAll(List.of(line.x1(), line.x2()));
        } else if (mark instanceof Mark.Shape shape) {
            shape.outline().forEach(part -> across.add(end(part)));
        } else if (mark instanceof Mark.Contour contour) {
            contour.path().forEach(part -> across.add(end(part)));
        } else if (mark instanceof Mark.Named named) {
            named.marks().forEach(part -> collect(part, across));
        }
    }

    private static double end(Segment part) {
        if (part instanceof Segment.Start start) {
            return start.x();
        }
        return part instanceof Segment.To to ? to.x() : ((Segment.Curve) part).x();
    }
}
