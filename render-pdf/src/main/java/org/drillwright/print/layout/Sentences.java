package org.drillwright.print.layout;

import java.util.Locale;
import org.drillwright.model.CardSize;

/** What is said of problems, each written once. */
final class Sentences {

    private Sentences() {}

    static String lacking(int codePoint) {
        String name = Character.getName(codePoint);
        return String.format(
                Locale.ROOT,
                "The character U+%04X (%s) cannot be printed: the card's typeface lacks it.",
                codePoint,
                name == null ? "not assigned" : name);
    }

    static String manyCards(int cards, CardSize size) {
        return "It needs " + cards + " cards of size " + size.word() + ": split the drill, or choose a larger card.";
    }

    static String broken(String word) {
        return "'" + word + "' is wider than its column and is broken with a hyphen.";
    }

    static String tooLong(CardSize size) {
        return "One part of it alone is longer than a card of size " + size.word()
                + ": shorten it, or choose a larger card.";
    }

    static String backTooLong(CardSize size) {
        return "Its notes and pictures do not fit on the backs of its cards of size " + size.word()
                + ": shorten the notes, or choose a larger card or another back.";
    }

    static String noPictures(CardSize size) {
        return "Its pictures do not fit on the front of a card of size " + size.word()
                + ": choose pictures for the back, or a larger card.";
    }
}
