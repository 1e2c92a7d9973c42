package org.drillwright.print.frame;

import java.util.List;

/** A part of what is to be read. The order of nodes is the reading order. */
public sealed interface Node {

    /** This node, shifted by so many points to the right and down. */
    Node moved(double dx, double dy);

    /** Several parts that belong together: a card, a table, a row. */
    record Group(Role role, List<Node> parts) implements Node {
        public Group {
            parts = List.copyOf(parts);
        }

        @Override
        public Node moved(double dx, double dy) {
            return new Group(
                    role, parts.stream().map(part -> part.moved(dx, dy)).toList());
        }
    }

    /** A stretch of words: one title, one paragraph, one cell; each text is a line of it. No lines: an empty cell. */
    record Words(Role role, List<Mark.Text> lines) implements Node {
        public Words {
            lines = List.copyOf(lines);
        }

        @Override
        public Node moved(double dx, double dy) {
            return new Words(
                    role, lines.stream().map(line -> line.moved(dx, dy)).toList());
        }
    }

    /**
     * A sign that stands for words, such as a disc for the leader.
     *
     * @param said the words that it stands for; never blank
     */
    record Sign(String said, List<Mark> marks) implements Node {
        public Sign {
            if (said.isBlank()) {
                throw new IllegalArgumentException("a sign stands for words");
            }
            marks = List.copyOf(marks);
        }

        @Override
        public Node moved(double dx, double dy) {
            return new Sign(said, marks.stream().map(mark -> mark.moved(dx, dy)).toList());
        }
    }

    /**
     * A picture.
     *
     * @param alternative what is said to who cannot see it; never blank
     * @param box what it covers
     * @param marks from the top left corner of the box, so that equal pictures are equal wherever they stand
     */
    record Figure(String alternative, Rectangle box, List<Mark> marks) implements Node {
        public Figure {
            if (alternative.isBlank()) {
                throw new IllegalArgumentException("a figure says in words what it shows");
            }
            marks = List.copyOf(marks);
        }

        @Override
        public Node moved(double dx, double dy) {
            return new Figure(alternative, box.moved(dx, dy), marks);
        }
    }

    /** A place that runs of text lead to: nothing is seen of it. */
    record Anchor(String name, double x, double y) implements Node {
        @Override
        public Node moved(double dx, double dy) {
            return new Anchor(name, x + dx, y + dy);
        }
    }

    /**
     * A whole frame inside another, at its true size.
     *
     * @param x of the left edge of the place it takes
     * @param y of the top edge of the place it takes
     * @param top the side that its top points to
     */
    record Placed(double x, double y, Quarter top, Frame frame) implements Node {

        /** What it covers. */
        public Rectangle box() {
            return top.onItsSide()
                    ? new Rectangle(x, y, frame.height(), frame.width())
                    : new Rectangle(x, y, frame.width(), frame.height());
        }

        @Override
        public Node moved(double dx, double dy) {
            return new Placed(x + dx, y + dy, top, frame);
        }
    }
}
