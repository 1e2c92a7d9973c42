package org.drillwright.lexicon;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Pronouns that are written behind a verb as one word with it, one or two of them: {@code tírese}, {@code dándoselo}.
 *
 * @param lost each pronoun with the letters that a verb may lose before it: {@code pongámonos} is of {@code pongamos}
 */
record Enclitics(Map<String, String> lost) {

    private static final int MOST = 2;

    Enclitics {
        lost = Collections.unmodifiableMap(new LinkedHashMap<>(lost));
    }

    boolean isEmpty() {
        return lost.isEmpty();
    }

    /**
     * The verb and its pronouns; the word alone if it is not made so.
     *
     * @param verb whether a word is a form of a verb that takes them
     */
    List<String> parts(String word, Predicate<String> verb) {
        return parts(word, verb, MOST).orElse(List.of(word));
    }

    private Optional<List<String>> parts(String word, Predicate<String> verb, int most) {
        for (Map.Entry<String, String> pronoun : lost.entrySet()) {
            if (most > 0 && word.endsWith(pronoun.getKey())) {
                String before =
                        word.substring(0, word.length() - pronoun.getKey().length());
                Optional<List<String>> rest = verb.test(before)
                        ? Optional.of(List.of(before))
                        : verb.test(before + pronoun.getValue())
                                ? Optional.of(List.of(before + pronoun.getValue()))
                                : parts(before, verb, most - 1);
                if (rest.isPresent()) {
                    List<String> all = new ArrayList<>(rest.get());
                    all.add(pronoun.getKey());
                    return Optional.of(all);
                }
            }
        }
        return Optional.empty();
    }
}
