package org.drillwright.print.command.documents;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.drillwright.check.Subject;
import org.drillwright.explain.SetWork;
import org.drillwright.model.School;
import org.drillwright.model.SheetSize;
import org.drillwright.print.booklet.Booklet;
import org.drillwright.print.booklet.BookletEntry;
import org.drillwright.print.booklet.PageGrid;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.printing.InLanguage;
import org.drillwright.print.command.printing.PaperChoice;
import org.drillwright.print.command.printing.SchoolFaces;
import org.drillwright.print.command.printing.chosen.ChosenDrill;
import org.drillwright.print.command.printing.chosen.ChosenDrills;
import org.drillwright.print.command.printing.chosen.DrillChooser;
import org.drillwright.print.command.printing.chosen.Glyphs;
import org.drillwright.print.command.printing.chosen.PrintRefusal;
import org.drillwright.print.command.write.NamedFile;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.impose.Gathering;
import org.drillwright.print.layout.CardProblem;
import org.drillwright.print.layout.words.Label;
import org.drillwright.print.layout.words.Labels;
import org.drillwright.print.pdf.Chapter;
import org.drillwright.print.pdf.Contents;
import org.drillwright.print.pdf.DocumentInfo;
import org.drillwright.print.pdf.Family;
import org.drillwright.school.SchoolFolder;
import org.drillwright.wording.Direction;
import org.drillwright.wording.Message;

/** Prints all drills of a school as a booklet. Without {@code draft} all are printed, or nothing. */
public final class BookletRun {

    /** Columns beside that of all drills, so that each is wide enough for its words. */
    private static final int MOST_SETS = 4;

    /** Before the drills stand two titles that no chapter gathers, the booklet's own and that of its contents. */
    private static final int IN_FRONT = 2;

    private final Invocation run;
    private final SchoolFolder folder;
    private final InLanguage language;
    private final Binding binding;
    private final SheetSize sheet;
    private final boolean draft;

    public BookletRun(
            Invocation run, SchoolFolder folder, InLanguage language, Binding binding, SheetSize sheet, boolean draft) {
        this.language = language;
        this.run = run;
        this.folder = folder;
        this.binding = binding;
        this.sheet = sheet;
        this.draft = draft;
    }

    /** Whether all drills were printed. */
    public boolean print(NamedFile file) {
        School school = language.school();
        Labels labels = Labels.in(school.language());
        Family faces = SchoolFaces.of(folder);
        ChosenDrills picks = language.picks(new DrillChooser(folder).whole());
        PrintRefusal refusal = PrintRefusal.of(run, draft, picks);
        List<ChosenDrill> printable = new Glyphs(faces).printable(picks, school, refusal);
        if (refusal.stops(printable.size())) {
            return refusal.close();
        }
        PageGrid grid = binding == Binding.LARGE ? PageGrid.whole(sheet) : PageGrid.half(sheet);
        Booklet all = book(picks.title(), printable, labels);
        List<String> tooLong = all.tooLong(grid, labels, faces);
        tooLong.forEach(id -> refusal.weigh(List.of(
                new CardProblem(CardProblem.Kind.NOT_PRINTED, id, "", Message.of(BookletRun.class, "part.too.long")))));
        List<ChosenDrill> whole =
                printable.stream().filter(pick -> !tooLong.contains(pick.id())).toList();
        if (refusal.stops(whole.size())) {
            return refusal.close();
        }
        Booklet book = tooLong.isEmpty() ? all : book(picks.title(), whole, labels);
        List<Frame> pages = book.pages(grid, labels, faces);
        DocumentInfo info = new DocumentInfo(picks.title(), school.language().locale());
        write(book, pages, new WholeDocument(file, info, faces));
        language.tell();
        return refusal.close();
    }

    private void write(Booklet book, List<Frame> pages, WholeDocument document) {
        Message drills =
                Message.counted(BookletRun.class, "drills", book.entries().size());
        Message count = Message.counted(BookletRun.class, "pages", pages.size());
        Message paper = PaperChoice.of(sheet).title();
        if (binding != Binding.FOLDED) {
            document.write(pages, new Contents(chapters(book), false));
            run.say(
                    binding == Binding.LARGE
                            ? Message.of(BookletRun.class, "booklet.large", document.shown(), drills, count, paper)
                            : Message.of(BookletRun.class, "booklet.single", document.shown(), drills, count, paper));
            return;
        }
        Gathering gathering = Gathering.of(
                pages, Direction.of(language.school().language().locale()).isRightToLeft());
        document.write(gathering.sides(), new Contents(chapters(book), false, gathering.order()));
        int all = gathering.sides().size() / 2;
        Message sheets = Message.counted(BookletRun.class, "sheets", all, paper);
        run.say(
                all == gathering.sheets()
                        ? Message.of(BookletRun.class, "booklet.folded", document.shown(), drills, count, sheets)
                        : Message.of(
                                BookletRun.class,
                                "booklet.folded.each",
                                document.shown(),
                                drills,
                                count,
                                sheets,
                                gathering.sheets()));
    }

    private Booklet book(String title, List<ChosenDrill> picks, Labels labels) {
        School school = language.school();
        List<Subject> drills =
                picks.stream().flatMap(pick -> pick.entry().subject().stream()).toList();
        Map<String, SetWork> work = new LinkedHashMap<>();
        Map<String, Integer> sizes = new LinkedHashMap<>();
        sets(labels, drills).forEach((name, some) -> {
            work.put(name, SetWork.of(some, school));
            sizes.put(name, some.size());
        });
        List<BookletEntry> entries = picks.stream()
                .flatMap(pick -> pick.entry().subject().stream()
                        .map(drill -> new BookletEntry(pick.card(drill, school, labels))))
                .toList();
        return new Booklet(title, entries, work, sizes, Indexing.of(drills, school));
    }

    /** The drills' bookmarks stand under those of their sets. */
    private static List<Chapter> chapters(Booklet book) {
        List<Chapter> chapters = new ArrayList<>(List.of(new Chapter("", IN_FRONT)));
        Map<String, Integer> parts = new LinkedHashMap<>();
        book.entries().forEach(entry -> parts.merge(entry.part(), 1, Integer::sum));
        parts.forEach((part, drills) -> chapters.add(new Chapter(part, drills)));
        return chapters;
    }

    /** Sets that a page is wide enough for, and all drills. */
    private Map<String, List<Subject>> sets(Labels labels, List<Subject> drills) {
        Map<String, List<Subject>> sets = new LinkedHashMap<>();
        List<String> names = new DrillChooser(folder).names();
        for (String name : names.subList(0, Math.min(MOST_SETS, names.size()))) {
            folder.school().set(name).ifPresent(set -> {
                List<String> ids = folder.idsOf(set);
                List<Subject> some = drills.stream()
                        .filter(drill -> ids.contains(drill.drill().id()))
                        .toList();
                if (!some.isEmpty()) {
                    sets.put(language.word(name), some);
                }
            });
        }
        sets.put(labels.text(Label.ALL_DRILLS), drills);
        return sets;
    }
}
