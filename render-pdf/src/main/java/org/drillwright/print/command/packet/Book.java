package org.drillwright.print.command.packet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.drillwright.check.Subject;
import org.drillwright.explain.SetWork;
import org.drillwright.mark.PrintMark;
import org.drillwright.model.CardSize;
import org.drillwright.model.School;
import org.drillwright.model.SheetSize;
import org.drillwright.print.booklet.Booklet;
import org.drillwright.print.booklet.Entry;
import org.drillwright.print.command.printing.Count;
import org.drillwright.print.command.printing.LaidCard;
import org.drillwright.print.command.printing.Paper;
import org.drillwright.print.command.printing.Product;
import org.drillwright.print.command.printing.picks.Picking;
import org.drillwright.print.command.printing.picks.Picks;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.layout.words.Label;
import org.drillwright.print.layout.words.Labels;
import org.drillwright.print.pdf.Contents;
import org.drillwright.school.SchoolFolder;

/** All drills of a school as a booklet. */
final class Book implements Product {

    /** Columns beside that of all drills, so that each is wide enough for its bar. */
    private static final int MOST_SETS = 4;

    private final SchoolFolder folder;
    private final Picks picks;
    private final CardSize card;
    private final SheetSize size;
    private final Whole document;
    private final Map<String, List<Frame>> cards = new LinkedHashMap<>();
    private int pages;

    Book(SchoolFolder folder, Picks picks, CardSize card, SheetSize size, Whole document) {
        this.folder = folder;
        this.picks = picks;
        this.card = card;
        this.size = size;
        this.document = document;
    }

    @Override
    public void take(List<LaidCard> drill) {
        drill.forEach(one -> cards.computeIfAbsent(one.drill(), id -> new ArrayList<>())
                .addAll(Stream.concat(Stream.of(one.leaf().front()), one.leaf().back().stream())
                        .toList()));
    }

    @Override
    public void place() {
        School school = folder.school();
        Labels labels = Labels.in(school.language());
        List<Subject> drills = drills();
        Map<String, SetWork> work = new LinkedHashMap<>();
        Map<String, Integer> sizes = new LinkedHashMap<>();
        sets(labels, drills).forEach((name, some) -> {
            work.put(name, SetWork.of(some, school));
            sizes.put(name, some.size());
        });
        List<Entry> entries = drills.stream()
                .map(drill -> new Entry(
                        drill.drill(),
                        PrintMark.of(drill.drill(), school),
                        cards.getOrDefault(drill.drill().id(), List.of())))
                .toList();
        Booklet booklet = new Booklet(school, picks.title(), entries, work, sizes, Indexing.of(drills, school));
        List<Frame> all = booklet.pages(size, labels, document.faces());
        pages = all.size();
        document.write(all, Contents.PLAIN);
    }

    /** Those that were laid. */
    private List<Subject> drills() {
        return picks.drills().stream()
                .flatMap(pick -> pick.entry().subject().stream())
                .filter(drill -> cards.containsKey(drill.drill().id()))
                .toList();
    }

    /** Sets that a page is wide enough for, and all drills. */
    private Map<String, List<Subject>> sets(Labels labels, List<Subject> drills) {
        Map<String, List<Subject>> sets = new LinkedHashMap<>();
        List<String> names = new Picking(folder).names();
        for (String name : names.subList(0, Math.min(MOST_SETS, names.size()))) {
            folder.school().set(name).ifPresent(set -> {
                List<String> ids = folder.idsOf(set);
                List<Subject> some = drills.stream()
                        .filter(drill -> ids.contains(drill.drill().id()))
                        .toList();
                if (!some.isEmpty()) {
                    sets.put(name, some);
                }
            });
        }
        sets.put(labels.text(Label.ALL_DRILLS), drills);
        return sets;
    }

    @Override
    public void discard() {
        cards.clear();
    }

    @Override
    public String said() {
        return document.shown() + ": " + Count.of(cards.size(), "drill") + " with cards of size " + card.word() + ", "
                + Count.of(pages, "page") + " of " + Paper.of(size).title() + ". Print at 100 % (actual size).";
    }
}
