package org.drillwright.print.sheet.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drillwright.model.School;
import org.drillwright.model.SheetSize;
import org.drillwright.plan.evening.ClassPlan;
import org.drillwright.plan.pair.PairingPlan;
import org.drillwright.plan.pair.Round;
import org.drillwright.plan.roster.Naming;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.page.Foot;
import org.drillwright.print.page.Mirrored;
import org.drillwright.print.text.Typefaces;

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
            School school,
            String mark,
            Typefaces faces) {
        WallTexts words = WallTexts.in(school.language());
        String day = words.day(plan.brief().date());
        String foot = Foot.line(
                mark.isEmpty() ? "" : words.text(WallText.PLAN, mark), school.name(), day, words.text(WallText.PRINT));
        return of(new Notice(words, day, foot, plan::title, plan::repetitions, size, faces), pairs, names);
    }

    static EveningSheet of(Notice notice, PairingPlan pairs, Naming names) {
        return new EveningSheet(notice, pairs, names);
    }

    /** For the wall. */
    public List<Frame> pages() {
        Optional<LineRounds> lines = LineRounds.of(pairs, names, notice.wording());
        Evening evening = Evening.of(pairs, names, notice.wording());
        if (lines.isEmpty()) {
            List<String> rules = new ArrayList<>(rule());
            rules.addAll(byChoice(PlaceKind.PLACE));
            return mirrored(new EveningGrid(notice, evening, rules, /* whole= */ true).pages(0));
        }
        List<Frame> pages = new ArrayList<>(new LinesPage(
                        notice,
                        lines.get(),
                        heading(),
                        new LinesWords(notice, pairs, lines.get()).paragraphs(byChoice(PlaceKind.POST)),
                        lines.get().walks().stream()
                                .map(walk -> LineRounds.staying(walk, names, notice.wording()))
                                .toList())
                .pages());
        Evening read = evening.only(round -> pairs.walk(round).isEmpty());
        if (!read.columns().isEmpty()) {
            pages.addAll(new EveningGrid(notice, read, List.of(), /* whole= */ false).pages(pages.size()));
        }
        return mirrored(pages);
    }

    private List<Frame> mirrored(List<Frame> pages) {
        return Mirrored.pages(pages, notice.wording().locale(), notice.faces());
    }

    /** Where the lines aren't drawn it is said how people walk. */
    private List<String> rule() {
        boolean walked = pairs.rounds().stream().anyMatch(round -> pairs.isStepped(round.number()));
        ChangeSentences sentences = new ChangeSentences(notice.wording(), names);
        return walked ? pairs.changes().stream().map(sentences::of).toList() : List.of();
    }

    private String heading() {
        return pairs.firstPlanned() == 0
                ? notice.day()
                : notice.wording().text(WallText.FROM_ROUND, notice.day(), pairs.firstPlanned() + 1);
    }

    /** That two new ones work together is no slip; and who watches them. */
    private List<String> byChoice(PlaceKind spot) {
        boolean one = pairs.rounds().stream().map(Round::drill).distinct().count() == 1;
        List<String> said = new ArrayList<>(pairs.watched().stream()
                .map(watch ->
                        Supervision.choice(watch, one ? "" : notice.title().apply(watch.drill()), notice.wording()))
                .toList());
        said.addAll(Supervision.sentences(pairs, spot, names, notice.wording()));
        return said;
    }

    /** For each person's hand. */
    public List<Frame> slips() {
        return mirrored(new Slips(notice, pairs, names).pages());
    }
}
