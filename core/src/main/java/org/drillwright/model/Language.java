package org.drillwright.model;

import java.util.Locale;

/** The language of a card's labels; the drill's own words may be in any. */
public enum Language {
    ENGLISH("en"),
    FRENCH("fr"),
    ITALIAN("it");

    private final String word;

    Language(String word) {
        this.word = word;
    }

    /** The tag that a school file uses (BCP 47). */
    public String word() {
        return word;
    }

    public Locale locale() {
        return Locale.forLanguageTag(word);
    }
}
