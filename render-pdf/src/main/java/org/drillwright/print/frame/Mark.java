package org.drillwright.print.frame;

import java.util.List;
import java.util.Optional;

/** Something drawn. Lengths are points. */
public sealed interface Mark {

    /** This mark, shifted by so many points to the right and down. */
    Mark moved(double dx, double dy);

    /**
     * A run of text on one line. A soft hyphen at its end is drawn as a hyphen: the word goes on in the next run.
     *
     * @param x where the first glyph begins
     * @param baseline of the line
     * @param size of the type
     * @param degrees turned about its beginning, against the clock
     */
    record Text(double x, double baseline, double size, Face face, String text, Ink ink, double degrees, RunRole span)
            implements Mark {

        public Text(double x, double baseline, double size, Face face, String text, Ink ink) {
            this(x, baseline, size, face, text, ink, 0);
        }

        public Text(double x, double baseline, double size, Face face, String text, Ink ink, double degrees) {
            this(x, baseline, size, face, text, ink, degrees, RunRole.PLAIN);
        }

        @Override
        public Text moved(double dx, double dy) {
            return new Text(x + dx, baseline + dy, size, face, text, ink, degrees, span);
        }
    }

    /** A straight stroke. */
    record Line(double x1, double y1, double x2, double y2, double width, Ink ink) implements Mark {
        @Override
        public Line moved(double dx, double dy) {
            return new Line(x1 + dx, y1 + dy, x2 + dx, y2 + dy, width, ink);
        }
    }

    /** A closed outline, filled, stroked or both. */
    record Shape(List<Segment> outline, Optional<Ink> fill, Optional<Stroke> stroke) implements Mark {
        public Shape {
            outline = List.copyOf(outline);
        }

        public static Shape filled(List<Segment> outline, Ink ink) {
            return new Shape(outline, Optional.of(ink), Optional.empty());
        }

        public static Shape stroked(List<Segment> outline, double width, Ink ink) {
            return new Shape(outline, Optional.empty(), Optional.of(new Stroke(width, ink)));
        }

        @Override
        public Shape moved(double dx, double dy) {
            return new Shape(outline.stream().map(part -> part.moved(dx, dy)).toList(), fill, stroke);
        }
    }

    /** A stroke along an outline, which may be open, with round corners and ends. */
    record Contour(List<Segment> path, double width, Ink ink) implements Mark {
        public Contour {
            path = List.copyOf(path);
        }

        @Override
        public Contour moved(double dx, double dy) {
            return new Contour(path.stream().map(part -> part.moved(dx, dy)).toList(), width, ink);
        }
    }

    /**
     * Marks that together show one thing.
     *
     * @param name what they show, such as {@code closed}
     */
    record Named(String name, List<Mark> marks) implements Mark {
        public Named {
            marks = List.copyOf(marks);
        }

        @Override
        public Named moved(double dx, double dy) {
            return new Named(
                    name, marks.stream().map(mark -> mark.moved(dx, dy)).toList());
        }
    }

    /** How an outline is drawn. */
    record Stroke(double width, Ink ink) {}
}
