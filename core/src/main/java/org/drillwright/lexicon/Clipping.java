package org.drillwright.lexicon;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * Words that a writer may cut short as he pleases: by leaving off the end, by the first letters and the last, or by leaving
 * out vowels. What may stand for two of them stands for none.
 */
final class Clipping {

    /** As many letters of the beginning show which word it is. */
    private static final int BEGINNING = 3;

    private static final String VOWELS = "aeiouy";

    /** By their first letter, which nobody leaves out. */
    private final Map<Character, List<String>> words;

    private final Predicate<String> listed;

    /**
     * @param words in full, folded
     * @param listed whether a word stands for itself
     */
    Clipping(Set<String> words, Predicate<String> listed) {
        this.words = new TreeSet<>(words).stream().collect(Collectors.groupingBy(word -> word.charAt(0)));
        this.listed = listed;
    }

    /** The only word that it may stand for; nothing if it stands for itself. Of words that grow out of one another the shortest. */
    Optional<String> word(String cut) {
        if (words.isEmpty() || cut.length() < BEGINNING || listed.test(cut)) {
            return Optional.empty();
        }
        return one(cut).or(() -> cut.endsWith("s") && cut.length() > BEGINNING
                ? one(cut.substring(0, cut.length() - 1)).map(word -> word + "s")
                : Optional.empty());
    }

    private Optional<String> one(String cut) {
        List<String> found = words.getOrDefault(cut.charAt(0), List.of()).stream()
                .filter(word -> standsFor(cut, word))
                .toList();
        return found.stream()
                .filter(shortest -> found.stream().allMatch(word -> word.startsWith(shortest)))
                .findFirst();
    }

    private static boolean standsFor(String cut, String word) {
        return cut.length() < word.length()
                && (word.startsWith(cut)
                        || endsLike(cut, word)
                        || leavesOutInside(cut, word)
                        || isWithoutVowels(cut, word));
    }

    /** The beginning and the last letter or two, as in {@code opp'n}. */
    private static boolean endsLike(String cut, String word) {
        for (int tail = 1; tail <= 2; tail++) {
            int head = cut.length() - tail;
            if (head >= BEGINNING - 1
                    && word.startsWith(cut.substring(0, head))
                    && word.endsWith(cut.substring(head))) {
                return true;
            }
        }
        return false;
    }

    /** The beginning, some letters of the middle, and the last, as in {@code rec'vr}. */
    private static boolean leavesOutInside(String cut, String word) {
        return cut.length() > BEGINNING
                && word.startsWith(cut.substring(0, BEGINNING))
                && word.endsWith(cut.substring(cut.length() - 1))
                && isWithin(cut, word);
    }

    /** The first letter, and of the others only consonants, the last one or all up to some place among them. */
    private static boolean isWithoutVowels(String cut, String word) {
        if (cut.charAt(0) != word.charAt(0)
                || cut.substring(1).chars().anyMatch(letter -> VOWELS.indexOf(letter) >= 0)) {
            return false;
        }
        StringBuilder bare = new StringBuilder(word.substring(0, 1));
        word.substring(1)
                .chars()
                .filter(letter -> VOWELS.indexOf(letter) < 0)
                .forEach(letter -> bare.append((char) letter));
        String consonants = bare.toString();
        return consonants.startsWith(cut)
                || (isWithin(cut, consonants)
                        && consonants.charAt(consonants.length() - 1) == cut.charAt(cut.length() - 1));
    }

    private static boolean isWithin(String cut, String letters) {
        int at = 0;
        for (int next = 0; next < letters.length() && at < cut.length(); next++) {
            at += letters.charAt(next) == cut.charAt(at) ? 1 : 0;
        }
        return at == cut.length();
    }
}
