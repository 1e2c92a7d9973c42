package org.drillwright.print.sheet.wall;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Role;

/** What stands on pages, as who looks at them finds it. */
final class ReadBack {

    private ReadBack() {}

    static List<Node.Words> words(Node node) {
        List<Node.Words> words = new ArrayList<>();
        if (node instanceof Node.Group group) {
            group.parts().forEach(part -> words.addAll(words(part)));
        } else if (node instanceof Node.Words some) {
            words.add(some);
        }
        return words;
    }

    static List<Node.Words> words(Frame page) {
        return page.content().stream().flatMap(node -> words(node).stream()).toList();
    }

    /** The rows of all tables, the heads first. */
    static List<List<Node.Words>> rows(Frame page) {
        List<List<Node.Words>> rows = new ArrayList<>();
        page.content().forEach(node -> rows(node, rows));
        return rows;
    }

    private static void rows(Node node, List<List<Node.Words>> into) {
        if (node instanceof Node.Group group && group.role() == Role.ROW) {
            into.add(words(group));
        } else if (node instanceof Node.Group group) {
            group.parts().forEach(part -> rows(part, into));
        }
    }

    static String text(Node.Words words) {
        return words.lines().stream()
                .map(Mark.Text::text)
                .collect(Collectors.joining(" "))
                .replaceAll(" +", " ");
    }

    static String text(Frame page) {
        return words(page).stream().map(ReadBack::text).collect(Collectors.joining("\n"));
    }

    /** A line on the page, measured once: on a large sheet each is compared with thousands of others. */
    private record Measured(Mark.Text line, double right, double top) {

        private static Measured of(Mark.Text line) {
            return new Measured(
                    line,
                    line.x() + Evenings.FACES.of(line.face()).width(line.text()) * line.size(),
                    line.baseline() - Evenings.FACES.of(Face.REGULAR).capHeight() * line.size());
        }

        private boolean isBeside(Measured other) {
            return right <= other.line.x() + 0.01 || other.right <= line.x() + 0.01;
        }

        private boolean isAboveOrBelow(Measured other) {
            return line.baseline() <= other.top + 0.01 || other.line.baseline() <= top + 0.01;
        }
    }

    /** All words lie between the margins, and none on others. */
    static void isClean(Frame page) {
        List<Measured> lines = words(page).stream()
                .flatMap(words -> words.lines().stream())
                .map(Measured::of)
                .toList();
        double edge = page.clear() - 0.01;
        for (int one = 0; one < lines.size(); one++) {
            Measured measured = lines.get(one);
            Mark.Text line = measured.line();
            assertTrue(line.x() >= edge && measured.right() <= page.width() - edge, line::text);
            assertTrue(measured.top() >= edge && line.baseline() <= page.height() - edge, line::text);
            for (Measured other : lines.subList(one + 1, lines.size())) {
                assertTrue(
                        measured.isBeside(other) || measured.isAboveOrBelow(other),
                        () -> line.text() + " lies on " + other.line().text());
            }
        }
    }
}
