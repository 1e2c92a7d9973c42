package org.drillwright.model;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A school's own words in another language, text for text; how a text is broken into lines does not matter. */
public final class Translations {

    /** A school that has none. */
    public static final Translations NONE = new Translations(List.of());

    private final List<Entry> entries;
    private final Map<String, String> filled = new HashMap<>();

    /**
     * A text and what it is in the other language.
     *
     * @param from as a drill has it
     * @param to the translation; empty as long as there is none
     * @param unused whether it is marked as one that no drill has any more
     */
    public record Entry(String from, String to, boolean unused) {
        public boolean isFilled() {
            return !to.isEmpty();
        }
    }

    /** @param entries of two for one text the first that is filled counts */
    public Translations(List<Entry> entries) {
        this.entries = List.copyOf(entries);
        entries.stream().filter(Entry::isFilled).forEach(entry -> filled.putIfAbsent(plain(entry.from()), entry.to()));
    }

    /** A text with single spaces between its words. */
    public static String plain(String text) {
        return text.strip().replaceAll("\\s+", " ");
    }

    public List<Entry> entries() {
        return entries;
    }

    /** A text's translation; empty if there is none yet. */
    public Optional<String> of(String text) {
        return Optional.ofNullable(filled.get(plain(text)));
    }
}
