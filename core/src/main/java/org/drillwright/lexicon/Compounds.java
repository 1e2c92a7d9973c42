package org.drillwright.lexicon;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * Words that are written as one with the word behind them: {@code Quartparade}, {@code zurückweichen}. A word is parted only
 * where every part is known, and of the kinds that join so.
 *
 * @param pairs which kinds of words stand before which
 * @param links letters that may stand between two parts; none as well
 */
record Compounds(List<Pair> pairs, List<String> links) {

    private static final int SHORTEST = 2;

    /**
     * Words that join: categories, or words themselves.
     *
     * @param first of which kind the first one is
     * @param last of which kind the one behind it
     */
    record Pair(Set<String> first, Set<String> last) {

        Pair {
            first = Set.copyOf(first);
            last = Set.copyOf(last);
        }
    }

    Compounds {
        pairs = List.copyOf(pairs);
        links = List.copyOf(links);
    }

    boolean isEmpty() {
        return pairs.isEmpty();
    }

    /**
     * The words that a word is made of; the word alone if it is not made so.
     *
     * @param kinds of what kinds a word is; empty if it is not known
     */
    List<String> parts(String word, Function<String, Set<String>> kinds) {
        return parted(word, kinds).orElse(List.of(word));
    }

    /** The longest first part is the likeliest: of a half circle and not of a half. */
    private Optional<List<String>> parted(String word, Function<String, Set<String>> kinds) {
        for (int end = word.length() - SHORTEST; end >= SHORTEST; end--) {
            String first = word.substring(0, end);
            Set<String> ofFirst = kinds.apply(first);
            if (!ofFirst.isEmpty()) {
                for (String link : links) {
                    if (word.startsWith(link, end)) {
                        Optional<List<String>> behind =
                                behind(first, ofFirst, word.substring(end + link.length()), kinds);
                        if (behind.isPresent()) {
                            return behind;
                        }
                    }
                }
            }
        }
        return Optional.empty();
    }

    private Optional<List<String>> behind(
            String first, Set<String> ofFirst, String rest, Function<String, Set<String>> kinds) {
        Set<String> ofRest = kinds.apply(rest);
        if (!ofRest.isEmpty()) {
            return join(ofFirst, ofRest) ? Optional.of(List.of(first, rest)) : Optional.empty();
        }
        return parted(rest, kinds)
                .filter(parts -> join(ofFirst, kinds.apply(parts.get(0))))
                .map(parts -> {
                    List<String> all = new ArrayList<>(List.of(first));
                    all.addAll(parts);
                    return all;
                });
    }

    private boolean join(Set<String> first, Set<String> last) {
        return pairs.stream()
                .anyMatch(pair -> first.stream().anyMatch(pair.first()::contains)
                        && last.stream().anyMatch(pair.last()::contains));
    }
}
