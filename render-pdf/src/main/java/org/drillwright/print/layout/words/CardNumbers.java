package org.drillwright.print.layout.words;

import java.util.List;
import java.util.stream.Collectors;

/** The numbers of cards on their ring, as they are printed. */
public final class CardNumbers {

    private CardNumbers() {}

    /** One behind the other; a set is named only where it is another than the one that is read. */
    public static String of(List<CardSubject.Place> cards, String set) {
        return cards.stream()
                .map(card -> card.set().equals(set) ? "" + card.number() : card.set() + "\u00A0" + card.number())
                .collect(Collectors.joining(", "));
    }
}
