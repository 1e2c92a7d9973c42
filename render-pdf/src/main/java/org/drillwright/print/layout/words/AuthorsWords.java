package org.drillwright.print.layout.words;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.drillwright.print.frame.RunRole;

/**
 * What the reading of a drill tells of its words.
 *
 * @param drill the language of most of its turns
 * @param leader the language of what the leader does, or the caller says
 * @param follower the language of what the follower does, or the class
 * @param ends the counts, from 0, whose distance is the one at which they end, and not the one at which they begin
 * @param apart texts of a language of their own, by their places in the drill
 * @param behind what texts end with in words of another language than their own, by their places
 */
public record AuthorsWords(
        Locale drill,
        Locale leader,
        Locale follower,
        Set<Integer> ends,
        Map<TextPlace, Locale> apart,
        Map<TextPlace, Behind> behind) {

    /** The end of a text, and its language. */
    public record Behind(String words, Locale language) {}

    public AuthorsWords {
        ends = Set.copyOf(ends);
        apart = Map.copyOf(apart);
        behind = Map.copyOf(behind);
    }

    /** No text has a language of its own. */
    public AuthorsWords(Locale drill, Locale leader, Locale follower, Set<Integer> ends) {
        this(drill, leader, follower, ends, Map.of(), Map.of());
    }

    /** All in one language, and each distance the one at which its count begins. */
    public static AuthorsWords in(Locale language) {
        return new AuthorsWords(language, language, language, Set.of());
    }

    /** The language of a text of the drill that is nobody's turn. */
    public Locale of(TextPlace place) {
        return of(place, drill);
    }

    /** The language of a text at a place. */
    public Locale of(TextPlace place, Locale usual) {
        return apart.getOrDefault(place, usual);
    }

    /** The end of a text that is in another language than the rest of it. */
    public Optional<Behind> behind(TextPlace place, String text) {
        return Optional.ofNullable(behind.get(place)).filter(end -> text.endsWith(end.words()));
    }

    /** How words of a language are marked among labels of another. */
    public static RunRole among(Labels labels, Locale language) {
        boolean same = language.getLanguage().equals(labels.language().locale().getLanguage());
        return same ? RunRole.PLAIN : RunRole.in(language);
    }
}
