package org.drillwright.print.sheet.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drillwright.model.SheetSize;
import org.drillwright.plan.evening.ClassPlan;
import org.drillwright.plan.pair.PairingPlan;
import org.drillwright.plan.roster.Naming;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.sheet.Feet;
import org.drillwright.print.text.Typefaces;
import org.drillwright.tell.ClassHead;

/**
 * The rounds that are still to be worked, on as few sheets as type that is read before a wall allows: where one line walks
 * past another, who stands where and how they walk; else where everybody works in each round.
 */
public final class EveningSheet {

    private final Notice notice;
    private final PairingPlan pairs;
    private final Naming names;

    private EveningSheet(Notice notice, PairingPlan pairs, Naming names) {
        this.notice = notice;
        this.pairs = pairs;
        this.names = names;
    }

    /** @param mark of the plan; empty if it has none */
    public static EveningSheet of(
            ClassPlan plan,
            PairingPlan pairs,
            Naming names,
            SheetSize size,
            String school,
            String mark,
            Typefaces faces) {
        String foot = Feet.words(Feet.mark(mark), school, ClassHead.date(plan), "Print at 100 % (actual size)");
        return of(new Notice(ClassHead.date(plan), foot, plan::title, plan::repetitions, size, faces), pairs, names);
    }

    static EveningSheet of(Notice notice, PairingPlan pairs, Naming names) {
        return new EveningSheet(notice, pairs, names);
    }

    /** For the wall. */
    public List<Frame> pages() {
        Optional<Lines> lines = Lines.of(pairs, names);
        Evening evening = Evening.of(pairs, names);
        if (lines.isEmpty()) {
            List<String> rules = new ArrayList<>(pairs.walk().isEmpty() ? List.of() : rule());
            rules.addAll(byChoice("place"));
            return new EveningGrid(notice, evening, rules, /* whole= */ true).pages(0);
        }
        List<Frame> pages = new ArrayList<>(new LinesPage(
                        notice,
                        lines.get(),
                        heading(),
                        new LinesWords(notice, pairs, lines.get()).paragraphs(byChoice("post")),
                        lines.get().walks().stream()
                                .map(walk -> Lines.staying(walk, names))
                                .toList())
                .pages());
        Evening read = evening.only(round -> pairs.walk(round).isEmpty());
        if (!read.columns().isEmpty()) {
            pages.addAll(new EveningGrid(notice, read, List.of(), /* whole= */ false).pages(pages.size()));
        }
        return pages;
    }

    /** Where the lines aren't drawn it is said how people walk. */
    private List<String> rule() {
        boolean walked = pairs.rounds().stream().anyMatch(round -> pairs.isStepped(round.number()));
        return walked ? pairs.walk() : List.of();
    }

    private String heading() {
        return notice.day() + (pairs.firstPlanned() == 0 ? "" : ", from round " + (pairs.firstPlanned() + 1));
    }

    /** That two new ones work together is no slip; and who watches them. */
    private List<String> byChoice(String place) {
        List<String> said = new ArrayList<>(pairs.watched().stream()
                .map(watch -> notice.title().apply(watch.drill()) + ": " + watch.sentence() + ".")
                .toList());
        said.addAll(Watching.sentences(pairs, place, names));
        return said;
    }

    /** For each person's hand. */
    public List<Frame> slips() {
        return new Slips(notice, pairs, names).pages();
    }
}
