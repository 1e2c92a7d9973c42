package org.drillwright.print.command.printing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.drillwright.model.School;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.console.ProgressLine;
import org.drillwright.print.layout.CardSubject;
import org.drillwright.print.layout.Labels;
import org.drillwright.print.layout.Problem;
import org.drillwright.print.pdf.Family;
import org.drillwright.source.Finding;

/**
 * One printing of cards. Without {@code draft} all that was picked is printed, or nothing; with it, all that can be.
 */
public final class CardRun {

    private final Invocation run;
    private final School school;
    private final Choices choices;
    private final Family faces;

    public CardRun(Invocation run, School school, Choices choices, Family faces) {
        this.run = run;
        this.school = school;
        this.choices = choices;
        this.faces = faces;
    }

    /** Prints what was picked to where it was asked for; whether all of it was printed. */
    public boolean print(Picks picks, Target target) {
        return print(picks, () -> target.product(choices, school, picks.title(), faces));
    }

    /** Prints what was picked into what is asked for once it is known that something can be printed. */
    public boolean print(Picks picks, Supplier<Product> made) {
        Refusal refusal = new Refusal(run, choices.draft());
        refusal.weigh(picks);
        List<CardSubject> subjects = subjects(picks, refusal);
        if (refusal.stops(subjects.size())) {
            return refusal.close();
        }
        Product product = made.get();
        try {
            Cards cards = new Cards(choices, Labels.in(school.language()), faces);
            int printable = lay(subjects, cards, product);
            refusal.weigh(cards.problems());
            if (refusal.stops(printable)) {
                return refusal.close();
            }
            product.place();
            remark(cards.problems());
            run.out().println(product.said());
            return refusal.close();
        } finally {
            product.discard();
        }
    }

    /** How many cards were laid. */
    private int lay(List<CardSubject> subjects, Cards cards, Product product) {
        ProgressLine progress = new ProgressLine(run, "Laying out");
        int laid = 0;
        for (int at = 0; at < subjects.size(); at++) {
            List<LaidCard> drill = cards.lay(subjects.get(at));
            laid += drill.size();
            product.take(drill);
            progress.read(at + 1, subjects.size());
        }
        return laid;
    }

    /** The cards that can be printed as far as their words go. */
    private List<CardSubject> subjects(Picks picks, Refusal refusal) {
        Glyphs glyphs = new Glyphs(faces);
        Labels labels = Labels.in(school.language());
        List<CardSubject> subjects = new ArrayList<>();
        for (Pick pick : picks.drills()) {
            pick.entry().subject().ifPresent(drill -> {
                CardSubject card = pick.card(drill, school, labels);
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
}
