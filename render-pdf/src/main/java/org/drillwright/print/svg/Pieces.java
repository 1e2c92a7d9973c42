package org.drillwright.print.svg;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Segment;
import org.drillwright.print.text.Typefaces;

/** Marks taken apart into pieces that can be compared with those of other drawings. */
final class Pieces {

    private static final int WHITE = 255;

    private final double units;
    private final Typefaces faces;

    /** @param units to a point */
    Pieces(double units, Typefaces faces) {
        this.units = units;
        this.faces = faces;
    }

    /** A white seam parts what follows from what is there: up to the next one it is one thing. */
    List<SharedPart> of(List<Mark> marks) {
        List<SharedPart> things = new ArrayList<>();
        List<Mark> thing = new ArrayList<>();
        for (int at = 0; at < marks.size(); at++) {
            if (isSeam(marks.get(at)) && !thing.isEmpty() && !isSeam(marks.get(at - 1))) {
                things.add(new SharedPart.Group(runs(thing)));
                thing.clear();
            }
            thing.add(marks.get(at));
        }
        List<SharedPart> last = runs(thing);
        things.addAll(things.isEmpty() ? last : List.of(new SharedPart.Group(last)));
        return things;
    }

    private static boolean isSeam(Mark mark) {
        return mark instanceof Mark.Contour contour && contour.ink().equals(Ink.WHITE);
    }

    /** What follows each other and looks alike is one run. */
    private List<SharedPart> runs(List<Mark> marks) {
        List<SharedPart> pieces = new ArrayList<>();
        List<Path> run = new ArrayList<>();
        String look = "";
        for (Mark mark : marks) {
            SharedPart next = piece(mark);
            boolean goesOn =
                    next instanceof SharedPart.Outline outline && outline.look().equals(look);
            if (!goesOn && !run.isEmpty()) {
                pieces.add(new SharedPart.Run(look, run));
                run.clear();
            }
            if (next instanceof SharedPart.Outline outline) {
                look = outline.look();
                run.add(outline.path());
            } else {
                pieces.add(next);
            }
        }
        if (!run.isEmpty()) {
            pieces.add(new SharedPart.Run(look, run));
        }
        return pieces;
    }

    /** All that is drawn, one after another. */
    static List<SharedPart> outlines(List<SharedPart> pieces) {
        List<SharedPart> outlines = new ArrayList<>();
        for (SharedPart piece : pieces) {
            if (piece instanceof SharedPart.Group group) {
                outlines.addAll(outlines(group.parts()));
            } else if (piece instanceof SharedPart.Run run) {
                run.paths().forEach(path -> outlines.add(new SharedPart.Outline(run.look(), path)));
            } else {
                outlines.add(piece);
            }
        }
        return outlines;
    }

    private SharedPart piece(Mark mark) {
        if (mark instanceof Mark.Shape shape) {
            return shape(shape);
        } else if (mark instanceof Mark.Contour contour) {
            String round = ";stroke-linejoin:round;stroke-linecap:round";
            return new SharedPart.Outline(
                    "fill:none" + stroke(contour.width(), contour.ink()) + round, Path.of(contour.path(), units));
        } else if (mark instanceof Mark.Line line) {
            List<Segment> path = List.of(new Segment.Start(line.x1(), line.y1()), new Segment.To(line.x2(), line.y2()));
            return new SharedPart.Outline("fill:none" + stroke(line.width(), line.ink()), Path.of(path, units));
        } else if (mark instanceof Mark.Named named) {
            return new SharedPart.Group(of(named.marks()));
        } else if (mark instanceof Mark.Text text) {
            Markup words = new Markup();
            new MarkSketch(words, faces).text(text);
            return new SharedPart.Written("<g transform=\"scale(" + Math.round(units) + ")\">" + words + "</g>");
        }
        throw new IllegalStateException("no way to draw " + mark);
    }

    /** A filled area closes by itself: so it is the same outline as a stroke along its edge. */
    private SharedPart shape(Mark.Shape shape) {
        String fill = "fill:" + shape.fill().map(Pieces::colour).orElse("none");
        Path path = Path.of(shape.outline(), units);
        return shape.stroke()
                .map(stroke -> new SharedPart.Outline(fill + stroke(stroke.width(), stroke.ink()), path.closed()))
                .orElseGet(() -> new SharedPart.Outline(fill, path));
    }

    private String stroke(double width, Ink ink) {
        StringBuilder stroke = new StringBuilder(";stroke:").append(colour(ink)).append(";stroke-width:");
        return Markup.number(width * units, stroke);
    }

    private static String colour(Ink ink) {
        long level = Math.round(ink.lightness() * WHITE);
        if (level == 0) {
            return "#000";
        }
        return level == WHITE ? "#fff" : "rgb(" + level + "," + level + "," + level + ")";
    }
}
