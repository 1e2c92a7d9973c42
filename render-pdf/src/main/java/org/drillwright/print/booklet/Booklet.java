package org.drillwright.print.booklet;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillwright.explain.SetWork;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.layout.block.Press;
import org.drillwright.print.layout.words.CardText;
import org.drillwright.print.layout.words.CardWriter;
import org.drillwright.print.layout.words.Labels;
import org.drillwright.print.page.Box;
import org.drillwright.print.page.Mirrored;
import org.drillwright.print.text.Typefaces;

/**
 * A whole school as a book.
 *
 * @param title of the book, such as the school's name
 * @param work what each set works, by its name, in order; all drills together are the last
 * @param sizes how many drills each set has
 */
public record Booklet(
        String title, List<BookletEntry> entries, Map<String, SetWork> work, Map<String, Integer> sizes, Index index) {

    /** References to pages settle at once, or after a page number has grown by a figure. */
    private static final int MOST_ROUNDS = 4;

    /** Behind the cover, which is one page. */
    private static final int CONTENTS = 2;

    public Booklet {
        entries = List.copyOf(entries);
    }

    /** Those of its drills of which one part alone fills more than a page. */
    public List<String> tooLong(PageGrid paper, Labels labels, Typefaces faces) {
        Printing printing = new Printing(paper, labels, faces);
        PageNumbers longest = longest();
        return entries.stream()
                .filter(entry -> printing.pages(entry, longest).shares().isEmpty())
                .map(BookletEntry::id)
                .toList();
    }

    /** Numbers of which none stands beside another, and that are as long as any: no list of pages is longer later. */
    private PageNumbers longest() {
        Map<String, Integer> pages = new HashMap<>();
        entries.forEach(entry -> pages.put(entry.id(), 1000 + 2 * pages.size()));
        return new PageNumbers(pages);
    }

    /**
     * All pages in the order of reading; the first lies at the right, in a language from right to left at the left. None of
     * its drills may be too long.
     */
    public List<Frame> pages(PageGrid paper, Labels labels, Typefaces faces) {
        Printing printing = new Printing(paper, labels, faces);
        Laid laid = printing.lay(new Laid(List.of(), Map.of(), CONTENTS, CONTENTS));
        for (int round = 1; round < MOST_ROUNDS; round++) {
            Laid again = printing.lay(laid);
            if (again.isNumberedAs(laid)) {
                return mirrored(again.pages(), labels, faces);
            }
            laid = again;
        }
        return mirrored(laid.pages(), labels, faces);
    }

    private static List<Frame> mirrored(List<Frame> pages, Labels labels, Typefaces faces) {
        return Mirrored.pages(pages, labels.language().locale(), faces);
    }

    /** Pages, and where things stand on them. */
    private record Laid(List<Frame> pages, Map<String, Integer> drills, int needs, int index) {

        boolean isNumberedAs(Laid other) {
            return drills.equals(other.drills) && needs == other.needs && index == other.index;
        }
    }

    private final class Printing {

        private final PageGrid paper;
        private final Labels labels;
        private final Press press;
        private final Map<String, CardText> texts = new HashMap<>();

        Printing(PageGrid paper, Labels labels, Typefaces faces) {
            this.paper = paper;
            this.labels = labels;
            this.press = new Press(paper.grid(), faces);
            entries.forEach(entry -> texts.put(entry.id(), new CardWriter(entry.subject(), labels, faces).write()));
        }

        DrillPages pages(BookletEntry entry, PageNumbers numbers) {
            DrillWords words = new DrillWords(entry, entries, numbers, labels, press.faces());
            return DrillPages.of(text(entry), words, paper, labels);
        }

        /** With the page numbers that the laying before has found. */
        Laid lay(Laid before) {
            PageNumbers numbers = new PageNumbers(before.drills());
            BookletPages pages = new BookletPages(press, labels);
            FrontMatter front = new FrontMatter(entries, numbers, press, labels);
            front.cover(title, CONTENTS, before.needs(), before.index(), pages);
            front.contents(pages);
            Map<String, Integer> drills = new HashMap<>();
            for (BookletEntry entry : entries) {
                DrillPages own = pages(entry, numbers);
                List<Box> bodies = own.bodies(entry.id());
                if (bodies.size() > 1 && !pages.isLeft()) {
                    pages.notes();
                }
                drills.put(entry.id(), pages.next());
                bodies.forEach(body -> pages.add(
                        entry.standing(labels), body, own.foot(), text(entry).draft()));
            }
            BackMatter back = new BackMatter(entries, numbers, press, labels);
            CoveragePages coverage = new CoveragePages(work, sizes, press, labels);
            // The index stands beside the needs, if both take a page.
            boolean early = !pages.isLeft();
            if (early) {
                coverage.lay(pages);
            }
            int needs = pages.next();
            back.needs(pages);
            int terms = pages.next();
            back.index(index, pages);
            if (!early) {
                coverage.lay(pages);
            }
            return new Laid(pages.laid(), drills, needs, terms);
        }

        private CardText text(BookletEntry entry) {
            return Optional.ofNullable(texts.get(entry.id())).orElseThrow();
        }
    }
}
