package org.drillwright.print.booklet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.drillwright.print.booklet.TwoColumns.Piece;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Role;
import org.drillwright.print.layout.block.Press;
import org.drillwright.print.layout.fit.Grid;
import org.drillwright.print.layout.words.Label;
import org.drillwright.print.layout.words.Labels;
import org.drillwright.print.page.Box;
import org.drillwright.print.page.LineWeight;
import org.drillwright.print.page.SetText;
import org.drillwright.print.page.Type;
import org.drillwright.print.text.Styled;

/** What stands behind the drills in two columns: what rests on what, and the index. */
final class BackMatter {

    /** A word that more drills say than this share of all leads nowhere. */
    private static final double EVERYWHERE = 2.0 / 3;

    /** Between the columns, as a share of the small size. */
    private static final double GAP = 1.6;

    /** Where the pages of an index stand, as a share of their column. */
    private static final double PAGES = 0.52;

    private final List<BookletEntry> entries;
    private final PageNumbers pages;
    private final Press press;
    private final Labels labels;
    private final Grid grid;
    private final Type type;
    private final double column;

    BackMatter(List<BookletEntry> entries, PageNumbers pages, Press press, Labels labels) {
        this.entries = List.copyOf(entries);
        this.pages = pages;
        this.press = press;
        this.labels = labels;
        this.grid = press.grid();
        this.type = press.small();
        this.column = (grid.inner() - GAP * type.size()) / 2;
    }

    /** Drills by steps: a drill's page, its title, the pages of what it needs. */
    void needs(BookletPages into) {
        Box how = press.paragraph(press.words(Face.REGULAR, labels.text(Label.MAP_HOW)), grid.left());
        List<Piece> pieces = new ArrayList<>();
        int number = 0;
        for (List<BookletEntry> step : Steps.of(entries)) {
            pieces.add(head(labels.text(Label.STEP, ++number)));
            for (BookletEntry entry : step) {
                pieces.add(new Piece(
                        hung(pages.listed(List.of(entry.id()), Face.BOLD), said(entry), grid.number() / 1.4)));
            }
        }
        lay(Label.MAP_TITLE, how, pieces, into);
    }

    private List<Styled> said(BookletEntry entry) {
        List<Styled> said = new ArrayList<>(List.of(entry.linked("", labels)));
        List<String> needs =
                entry.among(entries, true).stream().map(BookletEntry::id).toList();
        if (!needs.isEmpty()) {
            said.add(new Styled("←\u00A0", Face.REGULAR));
            said.addAll(pages.listed(needs, Face.REGULAR));
        }
        return said;
    }

    /** Words with the pages of the drills that say them. */
    void index(Index index, BookletPages into) {
        List<Piece> pieces = new ArrayList<>();
        add(Label.FUNDAMENTALS, index.fundamentals(), pieces);
        add(Label.TERMS, index.terms(), pieces);
        lay(Label.INDEX_TITLE, Box.NONE, pieces, into);
    }

    private void add(Label head, Map<String, Set<String>> words, List<Piece> pieces) {
        if (!words.isEmpty()) {
            pieces.add(head(labels.text(head)));
        }
        words.forEach((word, drills) ->
                pieces.add(new Piece(hung(List.of(new Styled(word, Face.REGULAR)), listed(drills), PAGES * column))));
    }

    private List<Styled> listed(Set<String> drills) {
        return drills.size() > EVERYWHERE * pages.drills()
                ? List.of(new Styled(labels.text(Label.EVERYWHERE), Face.REGULAR))
                : pages.listed(drills, Face.REGULAR);
    }

    private void lay(Label title, Box how, List<Piece> pieces, BookletPages into) {
        String name = labels.text(title);
        Box over = Box.stack(into.title(name), press.space(0.35), how, press.space(0.5));
        TwoColumns columns = new TwoColumns(grid.inner() - column, type.leading() / 4);
        columns.pages(over, pieces, into.room()).forEach(body -> into.add(name, body));
    }

    /** In bold, between rules. */
    private Piece head(String words) {
        double pad = 0.2 * type.leading();
        SetText set = type.set(press.words(Face.BOLD, words), grid.left(), pad, column);
        Mark heavy = LineWeight.HEAVY.across(grid.left(), grid.left() + column, 0);
        Box head = Box.of(Role.PARAGRAPH, set).padded(2 * pad).on(heavy);
        return new Piece(0.5 * type.leading(), head, true);
    }

    /** A name, and what is said of it further in, line under line. */
    private Box hung(List<Styled> name, List<Styled> said, double in) {
        SetText names = type.set(name, grid.left(), 0, in - 0.5 * type.size());
        SetText set = type.set(said, grid.left() + in, 0, column - in);
        Node item = new Node.Group(
                Role.LIST,
                List.of(new Node.Group(Role.ITEM, List.of(names.as(Role.ITEM_NAME), set.as(Role.ITEM_BODY)))));
        return Box.of(Math.max(names.height(), set.height()), item);
    }
}
