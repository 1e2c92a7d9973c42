package org.drillwright.print.command.printing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.drillwright.print.impose.Leaf;
import org.drillwright.print.layout.CardLayout;
import org.drillwright.print.layout.CardProblem;
import org.drillwright.print.layout.CardSides;
import org.drillwright.print.layout.Laid;
import org.drillwright.print.layout.words.CardSubject;
import org.drillwright.print.layout.words.Labels;
import org.drillwright.print.text.Typefaces;

/** Lays drill after drill as cards, and keeps what there is to say about them. */
final class Cards {

    private final PrintOptions choices;
    private final Labels labels;
    private final Typefaces faces;
    private final List<CardProblem> problems = new ArrayList<>();

    Cards(PrintOptions choices, Labels labels, Typefaces faces) {
        this.choices = choices;
        this.labels = labels;
        this.faces = faces;
    }

    /** A drill's cards; none, with a problem, if it cannot be printed whole. */
    List<LaidCard> lay(CardSubject drill) {
        Laid laid = CardLayout.lay(List.of(drill), choices.format(), choices.back(), labels, faces);
        problems.addAll(laid.problems());
        String set = drill.place().map(CardSubject.Place::set).orElse("");
        List<CardSides> cards = laid.cards();
        return IntStream.range(0, cards.size())
                .mapToObj(at -> new LaidCard(set, drill.drill().id(), at + 1, cards.size(), leaf(cards.get(at))))
                .toList();
    }

    private static Leaf leaf(CardSides card) {
        return new Leaf(card.front(), card.back());
    }

    /** What there is to say about the cards laid so far. */
    List<CardProblem> problems() {
        return List.copyOf(problems);
    }
}
