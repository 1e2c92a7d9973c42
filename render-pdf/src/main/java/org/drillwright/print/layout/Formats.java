package org.drillwright.print.layout;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Optional;
import org.drillwright.model.CardSize;
import org.drillwright.print.layout.fit.CardArea;
import org.drillwright.print.layout.fit.Legibility;
import org.drillwright.print.layout.fit.Scale;
import org.drillwright.print.layout.words.CardText;
import org.drillwright.print.layout.words.Labels;
import org.drillwright.print.text.Typefaces;

/** Which sizes of cards hold the words of one drill, each at the distance from which it is read. */
record Formats(CardText text, Labels labels, Typefaces faces) {

    /**
     * The size of the least area on which the drill needs no more than so many cards, among those that can be read from
     * as far as the one that was wished for: who wants a sheet for the wall is not helped by a card for the hand.
     */
    Optional<CardSize> smallest(CardSize wished, int cards) {
        return Arrays.stream(CardSize.values())
                .filter(size ->
                        Legibility.of(size).turns() >= Legibility.of(wished).turns())
                .sorted(Comparator.comparingDouble(size -> size.width() * size.height()))
                .filter(size -> holds(size, cards))
                .findFirst();
    }

    private boolean holds(CardSize size, int cards) {
        Scale floor = Scale.floor(size, faces);
        Composition composition = new Composition(text, CardArea.of(size), floor, labels, faces);
        return composition.shares().filter(shares -> shares.size() <= cards).isPresent()
                && composition.broken().isEmpty();
    }
}
