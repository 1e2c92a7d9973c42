package org.drillwright.print.command.printing;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.model.CardSize;
import org.drillwright.model.School;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.console.ProgressLine;
import org.drillwright.print.command.write.OutputFile;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.layout.CardSubject;
import org.drillwright.print.layout.Laid;
import org.drillwright.print.layout.Problem;
import org.drillwright.print.pdf.DejaVu;
import org.drillwright.source.Finding;

/**
 * One printing of cards. Without {@code draft} all that was picked is printed, or nothing; with it, all that can be.
 */
public final class CardRun {

    private final Invocation run;
    private final School school;
    private final CardSize size;
    private final Paper paper;
    private final boolean draft;
    private final DejaVu faces = DejaVu.family();

    public CardRun(Invocation run, School school, CardSize size, Paper paper, boolean draft) {
        this.run = run;
        this.school = school;
        this.size = size;
        this.paper = paper;
        this.draft = draft;
    }

    /** Prints what was picked to a file; whether all of it was printed. */
    public boolean print(Picks picks, OutputFile file, String shown) {
        Refusal refusal = new Refusal(run, draft);
        refusal.weigh(picks);
        List<CardSubject> subjects = subjects(picks, refusal);
        if (refusal.stops(subjects.size())) {
            return refusal.close();
        }
        Cards cards = new Cards(school, size, paper, faces);
        Laid laid = cards.lay(subjects, new ProgressLine(run, "Laying out"));
        refusal.weigh(laid.problems());
        if (refusal.stops(laid.cards().size())) {
            return refusal.close();
        }
        List<Frame> pages = cards.pages(laid.cards());
        file.write(cards.write(pages, picks.title()));
        remark(laid.problems());
        run.out().println(result(shown, laid.cards().size(), pages.size()));
        return refusal.close();
    }

    /** The cards that can be printed as far as their words go. */
    private List<CardSubject> subjects(Picks picks, Refusal refusal) {
        Glyphs glyphs = new Glyphs(faces);
        List<CardSubject> subjects = new ArrayList<>();
        for (Pick pick : picks.drills()) {
            pick.entry().subject().ifPresent(drill -> {
                boolean sound = pick.entry().isSound();
                CardSubject card = new CardSubject(drill.drill(), school, pick.place(), !sound, Unjudged.remark(pick));
                List<Finding> lacking = glyphs.lacking(drill, card);
                refusal.weigh(pick, lacking);
                if (lacking.isEmpty()) {
                    subjects.add(card);
                }
            });
        }
        return subjects;
    }

    private void remark(List<Problem> problems) {
        problems.stream()
                .filter(problem -> problem.kind() == Problem.Kind.PRINTED)
                .forEach(problem -> run.out().println("note: " + problem.drill() + ": " + problem.sentence()));
    }

    private String result(String shown, int cards, int pages) {
        String on = paper == Paper.CARD ? "one to a page" : "on " + Count.of(pages, "sheet") + " of " + name(paper);
        return shown + ": " + Count.of(cards, "card") + " of size " + size.word() + ", " + on
                + ". Print at 100 % (actual size).";
    }

    private static String name(Paper paper) {
        return paper == Paper.A4 ? "A4" : "Letter";
    }
}
