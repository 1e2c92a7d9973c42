package org.drillwright.print.sheet;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.drillwright.plan.lesson.LessonPart;
import org.drillwright.plan.lesson.LessonPlan;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Outline;
import org.drillwright.print.frame.Rectangle;
import org.drillwright.print.page.Box;
import org.drillwright.print.page.LineWeight;
import org.drillwright.print.page.Mirrored;
import org.drillwright.print.page.Type;
import org.drillwright.report.plan.Clock;

/**
 * A class as a bar, to scale.
 *
 * @param width in points
 */
record LessonBar(LessonSentences sentences, HandType type, double width) {

    private static final double HEIGHT = 22;
    private static final int TICK = 15;

    /** Between two ticks, at the least. */
    private static final double APART = 22;

    Box block() {
        List<Mark> marks = new ArrayList<>();
        marks.add(Mark.Shape.stroked(
                Outline.box(new Rectangle(0, 0, width, HEIGHT)), LineWeight.THIN.width(), Ink.BLACK));
        List<LessonPart> parts = lesson().blocks();
        int drills = 0;
        for (int at = 0; at < parts.size(); at++) {
            LessonPart part = parts.get(at);
            boolean drill = part.kind() == LessonPart.Kind.DRILL;
            drills += drill ? 1 : 0;
            double x = x(part.start());
            double rule = drill ? 2 * LineWeight.HEAVY.width() : LineWeight.THIN.width();
            marks.add(new Mark.Line(x, 0, x, HEIGHT, rule, Ink.BLACK));
            name(part, drill ? String.valueOf(drills) : sentences.name(part), x, marks);
        }
        if (!parts.isEmpty()) {
            double end = x(parts.get(parts.size() - 1).end());
            marks.add(LineWeight.THIN.down(end, 0, HEIGHT));
        }
        ticks(marks);
        double height = HEIGHT + 1.5 * type.foot().size();
        Rectangle box = new Rectangle(0, 0, width, height);
        Node figure = new Node.Figure(
                said(),
                box,
                Mirrored.marks(marks, width, sentences.words().evening().locale(), type.faces()));
        return Box.of(height + 4, figure);
    }

    private String said() {
        return sentences
                .words()
                .text(
                        HandWord.TO_SCALE,
                        lesson().blocks().stream()
                                .map(part -> Clock.of(part.start()) + " " + sentences.name(part))
                                .collect(Collectors.joining(", ")));
    }

    private LessonPlan lesson() {
        return sentences.plan().lesson();
    }

    private double whole() {
        return Math.max(
                1, Math.max(lesson().length().toSeconds(), lesson().needed().toSeconds()));
    }

    private double x(Duration time) {
        return width * time.toSeconds() / whole();
    }

    /** Where there is room for it. */
    private void name(LessonPart part, String words, double x, List<Mark> marks) {
        boolean drill = part.kind() == LessonPart.Kind.DRILL;
        Type set = drill ? type.words() : type.foot();
        Face face = drill ? Face.BOLD : Face.REGULAR;
        double gap = 4;
        if (set.width(face, words) + 2 * gap <= x(part.length())) {
            double baseline = (HEIGHT + set.capHeight()) / 2;
            marks.add(set.line(face, words, x + gap, baseline));
        }
    }

    /** Each quarter of an hour, or less often in a long class. */
    private void ticks(List<Mark> marks) {
        Type small = type.foot();
        int step = TICK;
        while (x(Duration.ofMinutes(step)) < APART) {
            step *= 2;
        }
        for (int minute = 0; minute * 60L <= whole(); minute += step) {
            double x = x(Duration.ofMinutes(minute));
            String words = String.valueOf(minute);
            double wide = small.width(Face.REGULAR, words);
            double left = Math.max(0, Math.min(width - wide, x - wide / 2));
            marks.add(LineWeight.THIN.down(x, HEIGHT, HEIGHT + 3));
            marks.add(small.line(Face.REGULAR, words, left, HEIGHT + 3 + small.size()));
        }
    }
}
