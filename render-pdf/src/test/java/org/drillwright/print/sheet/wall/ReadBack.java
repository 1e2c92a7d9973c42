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

    private static double right(Mark.Text line) {
        return line.x() + Evenings.FACES.of(line.face()).width(line.text()) * line.size();
    }

    private static double top(Mark.Text line) {
        return line.baseline() - Evenings.FACES.of(Face.REGULAR).capHeight() * line.size();
    }

    /** All words lie between the margins, and none on others. */
    static void isClean(Frame page) {
        List<Mark.Text> lines =
                words(page).stream().flatMap(words -> words.lines().stream()).toList();
        double edge = page.clear() - 0.01;
        for (int one = 0; one < lines.size(); one++) {
            Mark.Text line = lines.get(one);
            assertTrue(line.x() >= edge && right(line) <= page.width() - edge, line.text());
            assertTrue(top(line) >= edge && line.baseline() <= page.height() - edge, line.text());
            for (Mark.Text other : lines.subList(one + 1, lines.size())) {
                boolean beside = right(line) <= other.x() + 0.01 || right(other) <= line.x() + 0.01;
                boolean above = line.baseline() <= top(other) + 0.01 || other.baseline() <= top(line) + 0.01;
                assertTrue(beside || above, line.text() + " lies on " + other.text());
            }
        }
    }
}
