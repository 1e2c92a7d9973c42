package org.drillwright.print.booklet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.drillwright.explain.SetWork;
import org.drillwright.model.School;
import org.drillwright.model.SheetSize;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.layout.words.Label;
import org.drillwright.print.layout.words.Labels;
import org.drillwright.print.page.Block;
import org.drillwright.print.page.Flow;
import org.drillwright.print.page.Foot;
import org.drillwright.print.page.Sheet;
import org.drillwright.print.page.Table;
import org.drillwright.print.page.Type;
import org.drillwright.print.text.Typefaces;

/**
 * A whole school as a book.
 *
 * @param work what each set works, by its name, in order; all drills together are the last
 * @param sizes how many drills each set has
 */
public record Booklet(
        School school,
        String title,
        List<Entry> entries,
        Map<String, SetWork> work,
        Map<String, Integer> sizes,
        Index index) {

    /** References to pages settle at once, or after a page number has grown by a figure. */
    private static final int MOST_ROUNDS = 4;

    public Booklet {
        entries = List.copyOf(entries);
    }

    public List<Frame> pages(SheetSize size, Labels labels, Typefaces faces) {
        Map<String, Integer> before = Map.of();
        Printing printing = new Printing(size, labels, faces, before);
        for (int round = 0; round < MOST_ROUNDS; round++) {
            printing = new Printing(size, labels, faces, before);
            printing.lay();
            if (printing.found.equals(before)) {
                break;
            }
            before = printing.found;
        }
        return printing.pages();
    }

    /** One laying of all pages, with the page numbers that the one before has found. */
    private final class Printing {

        private final SheetSize size;
        private final Sheet sheet;
        private final Labels labels;
        private final Type type;
        private final Map<String, Integer> known;
        private final Map<String, Integer> found = new HashMap<>();
        private final List<Frame> pages = new ArrayList<>();
        private final double width;

        Printing(SheetSize size, Labels labels, Typefaces faces, Map<String, Integer> known) {
            this.size = size;
            this.sheet = Sheet.upright(size);
            this.labels = labels;
            this.type = Type.reading(faces);
            this.known = known;
            this.width = sheet.inner();
        }

        List<Frame> pages() {
            return pages;
        }

        private Flow flow(Sheet on) {
            return new Flow(on, pages.size() + 1, Foot.of(type, on, labels, title));
        }

        void lay() {
            Flow front = flow(sheet);
            cover(front);
            contents(front);
            pages.addAll(front.pages());
            map();
            body();
        }

        private void body() {
            Flow flow = flow(sheet);
            DrillPages drills = new DrillPages(entries, known, type, width, labels);
            for (Entry entry : entries) {
                flow.turn();
                found.put(entry.drill().id(), flow.page());
                drills.lay(entry, flow);
            }
            new CoveragePages(work, sizes, type, width, labels).lay(flow);
            new IndexPages(known, type, width, labels).lay(index, flow);
            pages.addAll(flow.pages());
        }

        private void cover(Flow flow) {
            flow.add(Block.space(8 * type.size()));
            flow.add(type.times(2.6).title(title, width));
            flow.add(type.times(1.1).paragraph(Face.REGULAR, labels.text(Label.BOOKLET_SIZE, entries.size()), width));
            flow.add(Block.space(3 * type.size()));
            flow.turn();
        }

        private void contents(Flow flow) {
            flow.add(type.times(1.6).title(labels.text(Label.CONTENTS), width));
            Table table = Table.shared(type, width, 1, 1.1, 7, 2.6, 2, 1.4, 2.6);
            Block head = table.head(List.of(
                    labels.text(Label.NUMBER),
                    labels.text(Label.DRILL),
                    labels.text(Label.LEVEL),
                    labels.text(Label.WEAPON),
                    labels.text(Label.PAGE),
                    labels.text(Label.MARK_HEAD)));
            List<Block> rows = new ArrayList<>();
            for (Entry entry : entries) {
                rows.add(table.row(List.of(
                        String.valueOf(rows.size() + 1),
                        entry.title(),
                        entry.drill().level(),
                        labels.weapon(entry.drill().weapon()),
                        String.valueOf(known.getOrDefault(entry.drill().id(), 1)),
                        entry.mark().shown())));
            }
            flow.table(head, rows);
        }

        /** On a page that lies on its side: the way through a school is long. */
        private void map() {
            Sheet lying = Sheet.lying(size);
            Flow flow = flow(lying);
            flow.add(type.times(1.6).title(labels.text(Label.MAP_TITLE), lying.inner()));
            flow.add(type.paragraph(Face.REGULAR, labels.text(Label.MAP_HOW), lying.inner()));
            double height = flow.room() - type.size();
            NeedsMap map = new NeedsMap(entries.stream().map(Entry::drill).toList(), school, labels, type);
            flow.add(new Block(height, List.of(), List.of(map.draw(lying.inner(), height))));
            pages.addAll(flow.pages());
        }
    }
}
