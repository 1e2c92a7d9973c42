package org.drillwright.print.booklet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Role;
import org.drillwright.print.frame.RunRole;
import org.drillwright.print.layout.block.Press;
import org.drillwright.print.layout.fit.Grid;
import org.drillwright.print.layout.words.Label;
import org.drillwright.print.layout.words.Labels;
import org.drillwright.print.page.Box;
import org.drillwright.print.page.Flow;
import org.drillwright.print.page.LineWeight;
import org.drillwright.print.page.SetText;
import org.drillwright.print.page.Type;
import org.drillwright.print.text.Paragraph;
import org.drillwright.print.text.Styled;

/** What stands before the drills: what the booklet is, and its contents. */
final class FrontMatter {

    /** As shares of the line. */
    private static final double WEAPON = 0.17;

    private static final double MARK = 0.21;

    private final List<BookletEntry> entries;
    private final PageNumbers pages;
    private final Press press;
    private final Labels labels;
    private final Grid grid;
    private final Rows rows;

    FrontMatter(List<BookletEntry> entries, PageNumbers pages, Press press, Labels labels) {
        this.entries = List.copyOf(entries);
        this.pages = pages;
        this.press = press;
        this.labels = labels;
        this.grid = press.grid();
        double mark = grid.right() - MARK * grid.inner();
        List<Double> lefts = List.of(grid.left(), grid.axis(), mark - WEAPON * grid.inner(), mark);
        this.rows = Rows.of(press, lefts, 1)
                .holding(Stream.concat(Stream.of(heads("")), entries.stream().map(this::cells))
                        .toList());
    }

    /**
     * In words only.
     *
     * @param name of the school
     * @param contents where the contents begin, as the other two
     */
    void cover(String name, int contents, int needs, int index, BookletPages into) {
        Type turns = press.turns();
        double number = press.scale().number();
        Type large = new Type(press.faces(), number, 1.15 * number);
        List<Box> boxes = new ArrayList<>(List.of(press.space(6)));
        SetText title = large.balanced(press.words(Face.BOLD, name), grid.left(), 0, grid.inner());
        boxes.add(Box.of(Role.TITLE, title));
        boxes.add(press.space(1));
        boxes.add(press.rule(LineWeight.HEAVY));
        boxes.add(press.space(1));
        Stream.of(
                        labels.text(Label.BOOKLET_WHAT, entries.size()),
                        labels.text(Label.BOOKLET_FIND, contents, needs, index),
                        labels.text(Label.BOOKLET_MARK))
                .forEach(words -> {
                    SetText set = turns.set(press.words(Face.REGULAR, words), grid.left(), 0, grid.inner());
                    boxes.add(Box.of(Role.PARAGRAPH, set));
                    boxes.add(press.space(0.7));
                });
        boxes.add(press.space(0.3));
        boxes.add(press.rule(LineWeight.HEAVY));
        boxes.add(press.space(1));
        for (Styled words : List.of(
                new Styled(labels.text(Label.BOOKLET_RISK), Face.BOLD),
                new Styled(labels.text(Label.DEFERRAL_PAGE), Face.REGULAR))) {
            SetText set = turns.set(Paragraph.of(press.faces(), List.of(words)), grid.left(), 0, grid.inner());
            boxes.add(Box.of(Role.PARAGRAPH, set));
            boxes.add(press.space(0.5));
        }
        into.cover(Box.stack(boxes));
    }

    /** Part by part, each drill with its page, its weapon and its mark. */
    void contents(BookletPages into) {
        String name = labels.text(Label.CONTENTS);
        Flow flow = into.flow(name).add(Box.stack(into.title(name), press.space(0.5)));
        int from = 0;
        while (from < entries.size()) {
            String part = entries.get(from).part();
            List<Box> drills = entries.stream()
                    .skip(from)
                    .takeWhile(entry -> entry.part().equals(part))
                    .map(entry -> rows.row(cells(entry)))
                    .toList();
            flow.table(head(part), drills);
            from += drills.size();
        }
        into.add(flow);
    }

    private Box head(String part) {
        return Box.stack(press.space(0.5), rows.head(heads(part)));
    }

    private List<Styled> heads(String part) {
        return List.of(
                new Styled(labels.text(Label.PAGE), Face.BOLD),
                new Styled(BookletEntry.capital(part, labels.language().locale()), Face.BOLD),
                new Styled(labels.text(Label.WEAPON), Face.BOLD),
                new Styled(labels.text(Label.MARK_HEAD), Face.BOLD));
    }

    private List<Styled> cells(BookletEntry entry) {
        RunRole to = PageNumbers.to(entry.id());
        return List.of(
                new Styled(String.valueOf(pages.of(entry.id())), Face.BOLD, to),
                entry.linked("", labels),
                new Styled(labels.weapon(entry.drill().weapon()), Face.REGULAR),
                new Styled(entry.mark(labels), Face.REGULAR));
    }
}
