package org.drillwright.print.layout.words;

import java.util.Locale;
import java.util.Optional;
import org.drillwright.model.CardSize;

/** What is said of problems, each written once. */
public final class Sentences {

    private Sentences() {}

    public static String lacking(int codePoint) {
        String name = Character.getName(codePoint);
        return String.format(
                Locale.ROOT,
                "The character U+%04X (%s) cannot be printed: the card's typeface does not have it.",
                codePoint,
                name == null ? "not assigned" : name);
    }

    /** @param larger the smallest size that needs no more cards than are handy, if any */
    public static String manyCards(int cards, CardSize size, Optional<CardSize> larger) {
        return "It needs " + cards + (size.isForTheWall() ? " sheets" : " cards") + " of size " + size.word()
                + ", as type is never made smaller: split the drill"
                + larger.map(other -> ", or choose size " + other.word() + ", the smallest that needs "
                                + (size.isForTheWall() ? "no more than two." : "only one."))
                        .orElse("; no size that can be read from as far needs fewer.");
    }

    public static String broken(String word) {
        return "'" + word + "' is wider than its column and has to be broken.";
    }

    /** @param larger the smallest size that holds it, if any */
    public static String tooLong(CardSize size, Optional<CardSize> larger) {
        return "One part of it alone is longer than a card of size " + size.word() + ": shorten it"
                + larger.map(other -> ", or choose size " + other.word() + ", the smallest that holds it.")
                        .orElse("; no size that can be read from as far holds it.");
    }

    public static String backTooLong(CardSize size) {
        return "Its pictures do not fit on the back of a card of size " + size.word() + ": the back stays blank.";
    }
}
