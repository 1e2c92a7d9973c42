package org.drillwright.model;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;

/**
 * The language of a card's labels; the drill's own words may be in any.
 *
 * @param word the tag that a school file uses (BCP 47), one of those in the list of this package
 */
public record Language(String word) {

    public static final Language ENGLISH = new Language("en");

    private static final List<Language> ALL = listed();

    /** Those that the program has labels in, in the order in which they are offered. */
    public static List<Language> all() {
        return ALL;
    }

    public Locale locale() {
        return Locale.forLanguageTag(word);
    }

    private static List<Language> listed() {
        try (InputStream in = Language.class.getResourceAsStream("languages")) {
            if (in == null) {
                throw new IllegalStateException("the program was packed without its list of languages");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .map(Language::new)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
