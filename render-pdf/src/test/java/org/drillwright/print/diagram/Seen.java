package org.drillwright.print.diagram;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.drillwright.print.frame.Box;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Segment;

/** Reads a picture back from its marks: each is told by its name, and the line it stands in by where it stands. */
final class Seen {

    /** What does not stand in one line. */
    private static final List<String> BETWEEN_LINES = List.of("carried round", "unknown stroke");

    private final Node.Figure figure;

    Seen(Node.Figure figure) {
        this.figure = figure;
    }

    /**
     * What stands in the lines of one side, such as {@code high inside line: closed, stroke}; empty if none are drawn.
     */
    String lines(String side) {
        return named(figure.marks(), "lines of the " + side).map(Seen::lines).orElse("");
    }

    private static String lines(Mark.Named target) {
        Map<String, Box> places = new LinkedHashMap<>();
        for (Mark.Named mark : named(target.marks())) {
            if (mark.name().startsWith("line ")) {
                places.put(mark.name().substring(5), box(mark));
            }
        }
        Map<String, TreeSet<String>> seen = new LinkedHashMap<>();
        for (Mark.Named mark : named(target.marks())) {
            if (!mark.name().startsWith("line ") && !BETWEEN_LINES.contains(mark.name())) {
                place(places, box(mark))
                        .ifPresent(line -> seen.computeIfAbsent(line, one -> new TreeSet<>())
                                .add(mark.name()));
            }
        }
        return places.keySet().stream()
                .filter(seen::containsKey)
                .map(line -> line + ": " + String.join(", ", seen.getOrDefault(line, new TreeSet<>())))
                .collect(Collectors.joining("; "));
    }

    /** The line in which the middle of a mark stands, well inside. */
    private static Optional<String> place(Map<String, Box> places, Box mark) {
        double x = mark.x() + mark.width() / 2;
        double y = mark.y() + mark.height() / 2;
        double inside = 0.5;
        return places.entrySet().stream()
                .filter(line -> line.getValue().x() + inside < x
                        && x < line.getValue().right() - inside
                        && line.getValue().y() + inside < y
                        && y < line.getValue().bottom() - inside)
                .map(Map.Entry::getKey)
                .findFirst();
    }

    /** The place of a line's area of one side, in points. */
    Box area(String side, String line) {
        Mark.Named target = named(figure.marks(), "lines of the " + side).orElseThrow();
        return box(named(target.marks(), "line " + line).orElseThrow());
    }

    boolean has(String name) {
        return count(name) > 0;
    }

    long count(String name) {
        return all(figure.marks()).stream()
                .filter(mark -> mark.name().equals(name))
                .count();
    }

    List<Mark> plain() {
        return flat(figure.marks());
    }

    private static List<Mark> flat(List<Mark> marks) {
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

    /** What marks cover, without the width of strokes. */
    static Box box(Mark mark) {
        List<double[]> points = points(mark);
        double left = points.stream().mapToDouble(at -> at[0]).min().orElseThrow();
        double right = points.stream().mapToDouble(at -> at[0]).max().orElseThrow();
        double top = points.stream().mapToDouble(at -> at[1]).min().orElseThrow();
        double bottom = points.stream().mapToDouble(at -> at[1]).max().orElseThrow();
        return new Box(left, top, right - left, bottom - top);
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
        } else if (mark instanceof Mark.Text text) {
            assertEquals("?", text.text());
            points.add(new double[] {text.x(), text.baseline()});
            points.add(new double[] {text.x() + 0.5 * text.size(), text.baseline() - 0.7 * text.size()});
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
