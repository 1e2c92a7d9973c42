package org.drillwright.print.sheet.wall;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.plan.pair.Walk;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Outline;
import org.drillwright.print.frame.Rectangle;
import org.drillwright.print.page.Box;
import org.drillwright.print.page.LineWeight;
import org.drillwright.print.page.Type;

/** Two rows of posts: the line that stays, with names, and the line that walks, with arrows to the door and back again. */
final class LinesDrawing {

    private static final double SIDE = 34;
    private static final double RADIUS = 7;
    private static final double NAME = 14;
    private static final double SMALLEST_LEVEL = 11;
    private static final double HIGHEST = 110;
    private static final double NUMBER = 12;
    private static final double LETTER = 18;
    private static final double GAP = 3;

    /** Where posts are so far apart, in points, all is drawn as it is here; where farther, up to so much larger. */
    private static final double APART = 45;

    private static final double LARGEST = 2;

    private final Notice notice;
    private final Walk walk;
    private final List<String> names;
    private final double width;
    private final double scale;
    private final double step;
    private final double radius;
    private final double name;
    private final boolean level;
    private final double top;
    private final double line;
    private final double number;
    private final double other;
    private final double bottom;

    /** @param names of the line that stays, post by post */
    LinesDrawing(Notice notice, Walk walk, List<String> names) {
        this.notice = notice;
        this.walk = walk;
        this.names = names;
        this.width = notice.sheet().inner();
        double near = (width - 2 * SIDE * notice.scale()) / walk.length();
        this.scale = notice.scale() * Math.min(LARGEST, Math.max(1, near / (APART * notice.scale())));
        this.step = (width - 2 * SIDE * scale) / walk.length();
        this.radius = Math.min(RADIUS * scale, 0.28 * step);
        double widest = names.stream()
                .mapToDouble(one -> notice.type(1).width(Face.BOLD, one))
                .max()
                .orElse(1);
        double abreast = Math.min(NAME * scale, 0.92 * step / widest);
        this.level = abreast >= SMALLEST_LEVEL * scale;
        this.name = level ? abreast : Math.min(NAME * scale, Math.min(0.85 * step, HIGHEST * scale / widest));
        this.top = GAP * scale;
        this.line = top + 2 * GAP * scale + (level ? 1.2 * name : widest * name + GAP * scale) + radius;
        this.number = line + radius + GAP * scale + notice.type(NUMBER * scale).capHeight();
        this.other = number + GAP * scale + radius;
        this.bottom = other + radius + 1.5 * NUMBER * scale;
    }

    private double x(int post) {
        return SIDE * scale + (post + 0.5) * step;
    }

    Box block() {
        List<Mark> marks = new ArrayList<>();
        for (int post = 0; post < walk.length(); post++) {
            post(post, marks);
        }
        letters(marks);
        way(marks);
        Node figure = new Node.Figure(said(), new Rectangle(0, 0, width, bottom), marks);
        return Box.of(bottom + 2 * GAP * scale, figure);
    }

    private String said() {
        return notice.wording().text(WallText.DRAWN, walk.length(), String.join(", ", names));
    }

    private void post(int post, List<Mark> marks) {
        Type numbers = notice.type(Math.min(NUMBER * scale, 0.6 * step));
        String figure = String.valueOf(post + 1);
        marks.add(numbers.line(Face.REGULAR, figure, x(post) - numbers.width(Face.REGULAR, figure) / 2, number));
        if (!names.get(post).isEmpty()) {
            marks.add(Mark.Shape.filled(Outline.circle(x(post), line, radius), Ink.BLACK));
            name(post, marks);
        }
        if (!walk.moves().get(post).equals(Walk.REST)) {
            marks.add(Mark.Shape.stroked(Outline.circle(x(post), other, radius), 1, Ink.BLACK));
        }
    }

    private void name(int post, List<Mark> marks) {
        Type type = notice.type(name);
        double foot = line - radius - GAP * scale;
        String words = names.get(post);
        if (level) {
            marks.add(type.line(Face.BOLD, words, x(post) - type.width(Face.BOLD, words) / 2, foot));
        } else {
            marks.add(new Mark.Text(
                    x(post) + type.capHeight() / 2, foot, name, Face.BOLD, words, Ink.BLACK, /* degrees= */ 90));
        }
    }

    private void letters(List<Mark> marks) {
        Type type = notice.type(LETTER * scale);
        double left = 0.4 * SIDE * scale;
        marks.add(type.line(Face.BOLD, "A", left, line + type.capHeight() / 2));
        marks.add(type.line(Face.BOLD, "B", left, number - GAP * scale + 1.1 * type.capHeight()));
    }

    /** From post to post to the door, and round behind the line that stays. */
    private void way(List<Mark> marks) {
        double clear = radius + 1.5 * scale;
        for (int post = 1; post < walk.length(); post++) {
            arrow(x(post - 1) + clear, x(post) - clear, marks);
        }
        double left = 0.15 * SIDE * scale;
        double right = width - 0.45 * SIDE * scale;
        double last = x(walk.length() - 1) + clear;
        marks.add(new Mark.Line(last, other, right, other, 1, Ink.BLACK));
        marks.add(new Mark.Line(right, other, right, top, 1, Ink.BLACK));
        marks.add(new Mark.Line(right, top, left, top, 1, Ink.BLACK));
        double below = other + radius + 2 * scale;
        marks.add(new Mark.Line(left, top, left, below, 1, Ink.BLACK));
        marks.add(new Mark.Line(left, below, x(0) - 0.5 * radius, below, 1, Ink.BLACK));
        head(x(0) + 0.5 * radius, below, marks);
        Type small = notice.type(NUMBER * scale);
        double door = width - LineWeight.HEAVY.width();
        marks.add(new Mark.Line(door, line, door, other + radius, 2 * LineWeight.HEAVY.width(), Ink.BLACK));
        String said = notice.wording().text(WallText.DOOR);
        marks.add(small.line(
                Face.REGULAR, said, width - small.width(Face.REGULAR, said), other + radius + 1.2 * small.size()));
    }

    private void arrow(double from, double to, List<Mark> marks) {
        marks.add(new Mark.Line(from, other, to - 2, other, 1, Ink.BLACK));
        head(to, other, marks);
    }

    private void head(double x, double y, List<Mark> marks) {
        double size = Math.min(5 * scale, 0.3 * step);
        marks.add(Mark.Shape.filled(Outline.polygon(x, y, x - size, y - size / 2, x - size, y + size / 2), Ink.BLACK));
    }
}
