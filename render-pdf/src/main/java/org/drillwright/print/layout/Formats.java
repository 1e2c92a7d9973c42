package org.drillwright.print.layout;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Optional;
import org.drillwright.model.CardSize;
import org.drillwright.print.layout.fit.Grid;
import org.drillwright.print.layout.fit.Scale;
import org.drillwright.print.layout.words.CardText;
import org.drillwright.print.layout.words.Labels;
import org.drillwright.print.text.Typefaces;

/** Which sizes of cards hold the words of one drill, each at the distance from which it is read. */
record Formats(CardText text, Labels labels, Typefaces faces) {

    /** More cards are laid aside in the middle of a class; sheets for the wall hang one below the other. */
    static int handy(CardSize size) {
        return size.isForTheWall() ? 2 : 1;
    }

    /**
     * The size of the least area on which the drill needs no more than so many cards, among those that can be read from
     * as far as the one that was wished for: who wants a sheet for the wall is not helped by a card for the hand.
     */
    Optional<CardSize> smallest(CardSize wished, int cards) {
        return Arrays.stream(CardSize.values())
                .filter(size -> Scale.of(size).compareTo(Scale.of(wished)) >= 0)
                .sorted(Comparator.comparingDouble(size -> size.width() * size.height()))
                .filter(size -> holds(size, cards))
                .findFirst();
    }

    private boolean holds(CardSize size, int cards) {
        Composition composition = new Composition(text, Grid.of(size), labels, faces);
        return composition.isWhole()
                && composition.cards() <= cards
                && composition.broken().isEmpty();
    }
}
