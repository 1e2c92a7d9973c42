package org.drillwright.print.page;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Role;

/**
 * What is set as one, its top at 0.
 *
 * @param height in points
 * @param parts what it is made of, each where it stands: moved there only once it is known that it is printed
 * @param broken words that were wider than their column
 */
public record Box(double height, List<Part> parts, List<String> broken) {

    public static final Box NONE = space(0);

    /** Marks behind what is read and what is read, so many points to the right and down. */
    record Part(double x, double y, List<Mark> marks, List<Node> nodes) {
        Part {
            marks = List.copyOf(marks);
            nodes = List.copyOf(nodes);
        }

        private Part moved(double dx, double dy) {
            return dx == 0 && dy == 0 ? this : new Part(x + dx, y + dy, marks, nodes);
        }
    }

    public Box {
        parts = List.copyOf(parts);
        broken = List.copyOf(broken);
    }

    public static Box of(double height, List<Mark> marks, List<Node> nodes) {
        return new Box(height, List.of(new Part(0, 0, marks, nodes)), List.of());
    }

    /** What is read, with no marks behind it. */
    public static Box of(double height, Node... nodes) {
        return of(height, List.of(), List.of(nodes));
    }

    /** Set words as what they are to their reader; nothing is read where there are none. */
    public static Box of(Role role, SetText set) {
        return (set.lines().isEmpty() ? space(set.height()) : of(set.height(), set.as(role))).breaking(set);
    }

    public static Box space(double height) {
        return new Box(height, List.of(), List.of());
    }

    /** One under the other. */
    public static Box stack(List<Box> boxes) {
        List<Part> parts = new ArrayList<>();
        double y = 0;
        for (Box box : boxes) {
            for (Part part : box.parts()) {
                parts.add(part.moved(0, y));
            }
            y += box.height();
        }
        return new Box(y, parts, broken(boxes));
    }

    public static Box stack(Box... boxes) {
        return stack(List.of(boxes));
    }

    /** Each where it stands, as high as the highest. */
    public static Box abreast(List<Box> boxes) {
        return new Box(
                boxes.stream().mapToDouble(Box::height).max().orElse(0),
                boxes.stream().flatMap(box -> box.parts().stream()).toList(),
                broken(boxes));
    }

    public static double height(Collection<Box> boxes) {
        return boxes.stream().mapToDouble(Box::height).sum();
    }

    private static List<String> broken(List<Box> boxes) {
        return boxes.stream().flatMap(box -> box.broken().stream()).toList();
    }

    public List<Mark> marks() {
        List<Mark> marks = new ArrayList<>();
        parts.forEach(part -> part.marks().forEach(mark -> marks.add(mark.moved(part.x(), part.y()))));
        return marks;
    }

    public List<Node> nodes() {
        List<Node> nodes = new ArrayList<>();
        parts.forEach(part -> part.nodes().forEach(node -> nodes.add(node.moved(part.x(), part.y()))));
        return nodes;
    }

    public Box moved(double dx, double dy) {
        return new Box(height, parts.stream().map(part -> part.moved(dx, dy)).toList(), broken);
    }

    /** Taller by so much at its end. */
    public Box padded(double more) {
        return new Box(height + more, parts, broken);
    }

    /** The same with marks behind it. */
    public Box on(List<Mark> marks) {
        return new Box(
                height,
                Stream.concat(of(0, marks, List.of()).parts().stream(), parts.stream())
                        .toList(),
                broken);
    }

    public Box on(Mark... marks) {
        return on(List.of(marks));
    }

    /** All that is read of it as one. */
    public Box as(Role role) {
        return new Box(
                height,
                of(height, marks(), List.of(new Node.Group(role, nodes()))).parts(),
                broken);
    }

    /** The same with what was broken when its words were set. */
    public Box breaking(SetText... set) {
        return breaking(Stream.of(set).flatMap(one -> one.broken().stream()).toList());
    }

    Box breaking(List<String> words) {
        return new Box(
                height, parts, Stream.concat(broken.stream(), words.stream()).toList());
    }

    /** Whether nothing is read of it. */
    boolean isBlank() {
        return parts.stream().allMatch(part -> part.nodes().isEmpty());
    }

    /** Whether no word had to be broken. */
    public boolean isWhole() {
        return broken.isEmpty();
    }
}
