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
                "The character U+%04X (%s) cannot be printed: the card's typeface lacks it.",
                codePoint,
                name == null ? "not assigned" : name);
    }

    /** @param larger the smallest size that needs no more cards than are handy, if any */
    public static String manyCards(int cards, CardSize size, Optional<CardSize> larger) {
        return "It needs " + cards + " cards of size " + size.word()
                + ", for there its type may not be smaller and still be read: split the drill"
                + larger.map(other ->
                                ", or choose size " + other.word() + ", the smallest that needs no more than two.")
                        .orElse("; no size that is read from as far needs fewer than three.");
    }

    public static String broken(String word) {
        return "'" + word + "' is wider than its column and is broken with a hyphen.";
    }

    /** @param larger the smallest size that holds it, if any */
    public static String tooLong(CardSize size, Optional<CardSize> larger) {
        return "One part of it alone, in type that can still be read, is longer than a card of size " + size.word()
                + ": shorten it"
                + larger.map(other -> ", or choose size " + other.word() + ", the smallest that holds it.")
                        .orElse("; no size that is read from as far holds it.");
    }

    public static String backTooLong(CardSize size) {
        return "Its notes and pictures do not fit on the backs of its cards of size " + size.word()
                + ": shorten the notes, or choose a larger card or another back.";
    }

    public static String noPictures(CardSize size) {
        return "Its pictures do not fit on the front of a card of size " + size.word()
                + ": choose pictures for the back, or a larger card.";
    }
}
