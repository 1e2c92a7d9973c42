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
import org.drillwright.tell.GroupWords;

/**
 * The rounds that are still to be worked, on as few sheets as type that is read before a wall allows: where everybody
 * works in each round; or, where one line simply walks past another, who stands where and how they walk.
 */
public final class EveningSheet {

    private final Notice notice;
    private final PairingPlan pairs;
    private final Naming names;
    private final Optional<TwoLines> lines;

    private EveningSheet(Notice notice, PairingPlan pairs, Naming names) {
        this.notice = notice;
        this.pairs = pairs;
        this.names = names;
        this.lines = TwoLines.of(pairs);
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
        Optional<LinesPage> simple = lines.map(this::lines).filter(LinesPage::fits);
        if (simple.isPresent()) {
            return simple.get().pages();
        }
        List<String> rules = new ArrayList<>(pairs.method().isWalked() ? pairs.walk() : List.of());
        rules.addAll(byChoice());
        return new EveningGrid(notice, Evening.of(pairs, names), rules).pages();
    }

    private LinesPage lines(TwoLines walked) {
        List<String> left = walked.left().stream().map(this::called).toList();
        List<String> right = walked.right().stream().map(this::called).toList();
        return new LinesPage(notice, Evening.columns(pairs), left, right, walked.step(), byChoice());
    }

    /** That two new ones work together is no slip. */
    private List<String> byChoice() {
        return pairs.watched().stream()
                .map(watch -> notice.title().apply(watch.drill()) + ": " + watch.sentence() + ".")
                .toList();
    }

    private String called(String person) {
        return GroupWords.helper(person, names);
    }

    /** For each person's hand. */
    public List<Frame> slips() {
        return new Slips(notice, pairs, names).pages();
    }
}
