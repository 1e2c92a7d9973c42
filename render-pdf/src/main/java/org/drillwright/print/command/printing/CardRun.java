package org.drillwright.print.command.printing;

import java.util.List;
import java.util.function.Supplier;
import org.drillwright.model.School;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.console.ProgressLine;
import org.drillwright.print.command.printing.chosen.ChosenDrill;
import org.drillwright.print.command.printing.chosen.ChosenDrills;
import org.drillwright.print.command.printing.chosen.Glyphs;
import org.drillwright.print.command.printing.chosen.PrintRefusal;
import org.drillwright.print.layout.CardProblem;
import org.drillwright.print.layout.words.Labels;
import org.drillwright.print.pdf.Family;
import org.drillwright.wording.Message;

/**
 * One printing of cards. Without {@code draft} all that was picked is printed, or nothing; with it, all that can be.
 */
public final class CardRun {

    private final Invocation run;
    private final School school;
    private final PrintOptions choices;
    private final Family faces;

    public CardRun(Invocation run, School school, PrintOptions choices, Family faces) {
        this.run = run;
        this.school = school;
        this.choices = choices;
        this.faces = faces;
    }

    /** Prints what was picked to where it was asked for; whether all of it was printed. */
    public boolean print(ChosenDrills picks, OutputTarget target) {
        return print(picks, () -> target.product(choices, school, picks.title(), faces));
    }

    /** Prints what was picked into what is asked for once it is known that something can be printed. */
    public boolean print(ChosenDrills picks, Supplier<Product> made) {
        PrintRefusal refusal = PrintRefusal.of(run, choices.draft(), picks);
        List<ChosenDrill> printable = new Glyphs(faces).printable(picks, school, refusal);
        if (refusal.stops(printable.size())) {
            return refusal.close();
        }
        Product product = made.get();
        try {
            Cards cards = new Cards(choices, Labels.in(school.language()), faces);
            int laid = lay(printable, cards, product);
            refusal.weigh(cards.problems());
            if (refusal.stops(laid)) {
                return refusal.close();
            }
            product.place();
            remark(cards.problems());
            run.say(product.said());
            return refusal.close();
        } finally {
            product.discard();
        }
    }

    /** How many cards were laid. A drill is played and laid when its turn comes, and let go with its pictures. */
    private int lay(List<ChosenDrill> picks, Cards cards, Product product) {
        ProgressLine progress = new ProgressLine(run, Message.of(CardRun.class, "card-run.laying.out"));
        Labels labels = Labels.in(school.language());
        int laid = 0;
        for (int at = 0; at < picks.size(); at++) {
            ChosenDrill pick = picks.get(at);
            List<LaidCard> drill = pick.entry().subject().stream()
                    .flatMap(subject -> cards.lay(pick.card(subject, school, labels)).stream())
                    .toList();
            laid += drill.size();
            product.take(drill);
            progress.read(at + 1, picks.size());
        }
        return laid;
    }

    private void remark(List<CardProblem> problems) {
        problems.stream()
                .filter(problem -> problem.kind() == CardProblem.Kind.PRINTED)
                .forEach(problem -> run.say(Message.of(
                        CardRun.class,
                        "note",
                        Message.of(PrintRefusal.class, "of.drill", problem.drill(), problem.sentence()))));
    }
}
