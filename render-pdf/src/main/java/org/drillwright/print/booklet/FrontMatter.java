package org.drillwright.print.booklet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Role;
import org.drillwright.print.frame.RunRole;
import org.drillwright.print.layout.block.Press;
import org.drillwright.print.layout.block.SetText;
import org.drillwright.print.layout.block.Slab;
import org.drillwright.print.layout.fit.Grid;
import org.drillwright.print.layout.fit.TypeSize;
import org.drillwright.print.layout.words.Label;
import org.drillwright.print.layout.words.Labels;
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
        this.rows = Rows.holding(
                press,
                List.of(grid.left(), grid.axis(), mark - WEAPON * grid.inner(), mark),
                1,
                Stream.concat(Stream.of(heads("")), entries.stream().map(this::cells))
                        .toList());
    }

    /**
     * In words only.
     *
     * @param name of the school
     * @param contents where the contents begin, as the other two
     */
    void cover(String name, int contents, int needs, int index, BookletPages into) {
        TypeSize turns = press.scale().turns();
        TypeSize large =
                new TypeSize(press.scale().number(), 1.15 * press.scale().number());
        List<Slab> slabs = new ArrayList<>(List.of(press.space(6)));
        SetText title = press.balanced(press.words(Face.BOLD, name), large, grid.left(), 0, grid.inner());
        slabs.add(Press.slab(Role.TITLE, title));
        slabs.add(press.space(1));
        slabs.add(press.rule(Press.HEAVY));
        slabs.add(press.space(1));
        Stream.of(
                        labels.text(Label.BOOKLET_WHAT, entries.size()),
                        labels.text(Label.BOOKLET_FIND, contents, needs, index),
                        labels.text(Label.BOOKLET_MARK))
                .forEach(words -> {
                    SetText set = press.running(press.words(Face.REGULAR, words), turns, grid.left(), 0, grid.inner());
                    slabs.add(Press.slab(Role.PARAGRAPH, set));
                    slabs.add(press.space(0.7));
                });
        slabs.add(press.space(0.3));
        slabs.add(press.rule(Press.HEAVY));
        slabs.add(press.space(1));
        for (Styled words : List.of(
                new Styled(labels.text(Label.BOOKLET_RISK), Face.BOLD),
                new Styled(labels.text(Label.DEFERRAL_PAGE), Face.REGULAR))) {
            SetText set =
                    press.running(Paragraph.of(press.faces(), List.of(words)), turns, grid.left(), 0, grid.inner());
            slabs.add(Press.slab(Role.PARAGRAPH, set));
            slabs.add(press.space(0.5));
        }
        into.cover(Slab.stack(slabs));
    }

    /** Part by part, each drill with its page, its weapon and its mark. */
    void contents(BookletPages into) {
        String name = labels.text(Label.CONTENTS);
        Slab title = Slab.stack(List.of(into.title(name), press.space(0.5)));
        List<Slab> on = new ArrayList<>();
        double left = into.room() - title.height();
        Slab over = title;
        String part = "";
        for (BookletEntry entry : entries) {
            boolean begins = !entry.part().equals(part);
            part = entry.part();
            Slab row = row(entry);
            Slab head = begins || on.isEmpty() ? head(part) : Slab.NONE;
            if (head.height() + row.height() > left) {
                into.add(name, Slab.stack(List.of(over, rows.table(on))));
                on.clear();
                over = Slab.NONE;
                left = into.room();
                head = head(part);
            }
            left -= head.height() + row.height();
            on.add(head);
            on.add(row);
        }
        into.add(name, Slab.stack(List.of(over, rows.table(on))));
    }

    private Slab head(String part) {
        return Slab.stack(List.of(press.space(0.5), rows.head(heads(part))));
    }

    private List<Styled> heads(String part) {
        return List.of(
                new Styled(labels.text(Label.PAGE), Face.BOLD),
                new Styled(BookletEntry.capital(part, labels.language().locale()), Face.BOLD),
                new Styled(labels.text(Label.WEAPON), Face.BOLD),
                new Styled(labels.text(Label.MARK_HEAD), Face.BOLD));
    }

    private Slab row(BookletEntry entry) {
        return rows.row(cells(entry));
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
