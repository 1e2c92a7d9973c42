package org.drillwright.print.diagram;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Rectangle;
import org.drillwright.print.frame.Segment;

/** Reads a picture back from its marks: each is told by its name, and the line it stands in by where it stands. */
final class Seen {

    private final Node.Figure figure;

    Seen(Node.Figure figure) {
        this.figure = figure;
    }

    /** Whose lines are drawn, such as {@code follower}; empty if no one's are. */
    Optional<String> attacked() {
        return named(figure.marks()).stream()
                .map(Mark.Named::name)
                .filter(name -> name.startsWith("lines of the "))
                .map(name -> name.substring("lines of the ".length()))
                .findFirst();
    }

    /**
     * What stands in the lines of the one attacked, by the side of the paper, such as {@code high right: closed, point}.
     *
     * @param sabre whether the lines are those of a sabre: {@code head}, {@code left}, {@code right}
     */
    String lines(boolean sabre) {
        Optional<Mark.Named> inset = attacked().flatMap(side -> named(figure.marks(), "lines of the " + side));
        if (inset.isEmpty()) {
            return "";
        }
        List<Mark> strokes = named(inset.get().marks(), "lines").orElseThrow().marks();
        double level = ((Mark.Line) strokes.get(0)).y1();
        double middle = ((Mark.Line) strokes.get(1)).x1();
        TreeSet<String> seen = new TreeSet<>();
        for (Mark.Named mark : named(inset.get().marks())) {
            if (List.of("closed", "star", "point", "ring").contains(mark.name())) {
                Rectangle box = box(mark);
                double x = box.x() + box.width() / 2;
                double y = box.y() + box.height() / 2;
                String across = x < middle ? "left" : "right";
                String place = !sabre ? (y < level ? "high " : "low ") + across : y < level ? "head" : across;
                seen.add(place + ": " + mark.name());
            }
        }
        return String.join("; ", seen);
    }

    boolean has(String name) {
        return count(name) > 0;
    }

    long count(String name) {
        return all(figure.marks()).stream()
                .filter(mark -> mark.name().equals(name))
                .count();
    }

    /** The first mark of this name, outside the view of the one attacked. */
    Optional<Mark.Named> inThePair(String name) {
        List<Mark> outside = figure.marks().stream()
                .filter(mark -> !(mark instanceof Mark.Named one && one.name().startsWith("lines of the ")))
                .toList();
        return all(outside).stream().filter(mark -> mark.name().equals(name)).findFirst();
    }

    List<Mark> plain() {
        return flat(figure.marks());
    }

    static List<Mark> flat(List<Mark> marks) {
        List<Mark> flat = new ArrayList<>();
        for (Mark mark : marks) {
            if (mark instanceof Mark.Named group) {
                flat.addAll(flat(group.marks()));
            } else {
                flat.add(mark);
            }
        }
        return flat;
    }

    private static List<Mark.Named> all(List<Mark> marks) {
        List<Mark.Named> all = new ArrayList<>();
        for (Mark.Named mark : named(marks)) {
            all.add(mark);
            all.addAll(all(mark.marks()));
        }
        return all;
    }

    private static List<Mark.Named> named(List<Mark> marks) {
        return marks.stream()
                .filter(Mark.Named.class::isInstance)
                .map(Mark.Named.class::cast)
                .toList();
    }

    private static Optional<Mark.Named> named(List<Mark> marks, String name) {
        return named(marks).stream().filter(mark -> mark.name().equals(name)).findFirst();
    }

    /** What the ends of outlines cover, without the width of strokes. */
    static Rectangle box(Mark mark) {
        List<double[]> points = points(mark);
        double left = points.stream().mapToDouble(at -> at[0]).min().orElseThrow();
        double right = points.stream().mapToDouble(at -> at[0]).max().orElseThrow();
        double top = points.stream().mapToDouble(at -> at[1]).min().orElseThrow();
        double bottom = points.stream().mapToDouble(at -> at[1]).max().orElseThrow();
        return new Rectangle(left, top, right - left, bottom - top);
    }

    /** Of strokes and fills in black; what is white is paper. */
    static Optional<Double> blackStroke(Mark mark) {
        if (mark instanceof Mark.Line line && line.ink().equals(Ink.BLACK)) {
            return Optional.of(line.width());
        }
        if (mark instanceof Mark.Contour contour && contour.ink().equals(Ink.BLACK)) {
            return Optional.of(contour.width());
        }
        return mark instanceof Mark.Shape shape
                ? shape.stroke()
                        .filter(stroke -> stroke.ink().equals(Ink.BLACK))
                        .map(Mark.Stroke::width)
                : Optional.empty();
    }

    static List<Ink> inks(Mark mark) {
        List<Ink> inks = new ArrayList<>();
        if (mark instanceof Mark.Line line) {
            inks.add(line.ink());
        } else if (mark instanceof Mark.Contour contour) {
            inks.add(contour.ink());
        } else if (mark instanceof Mark.Shape shape) {
            shape.fill().ifPresent(inks::add);
            shape.stroke().map(Mark.Stroke::ink).ifPresent(inks::add);
        }
        return inks;
    }

    private static List<double[]> points(Mark mark) {
        List<double[]> points = new ArrayList<>();
        if (mark instanceof Mark.Named named) {
            named.marks().forEach(part -> points.addAll(points(part)));
        } else if (mark instanceof Mark.Line line) {
            points.add(new double[] {line.x1(), line.y1()});
            points.add(new double[] {line.x2(), line.y2()});
        } else if (mark instanceof Mark.Shape shape) {
            shape.outline().forEach(segment -> points.add(end(segment)));
        } else if (mark instanceof Mark.Contour contour) {
            contour.path().forEach(segment -> points.add(end(segment)));
        }
        return points;
    }

    private static double[] end(Segment segment) {
        if (segment instanceof Segment.Start start) {
            return new double[] {start.x(), start.y()};
        }
        if (segment instanceof Segment.To to) {
            return new double[] {to.x(), to.y()};
        }
        Segment.Curve curve = (Segment.Curve) segment;
        return new double[] {curve.x(), curve.y()};
    }
}
