package org.drillwright.check.mutation;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.drillwright.reading.TurnReader;

/** A way of saying a thing so that it is not said any more: misspelt, denied, or left to choice. */
enum Disguise {
    /** Two neighbouring letters of the word change places, so that no word comes of it that anybody knows. */
    MISSPELT {
        @Override
        Optional<String> of(String sentence, String word) {
            return misspelt(word).map(slip -> sentence.replaceFirst("(?<!\\p{L})" + word + "(?!\\p{L})", slip));
        }

        @Override
        Optional<String> ofItem(String item) {
            return misspelt(longest(item)).map(slip -> item.replace(longest(item), slip));
        }
    },
    /** The sentence is put behind 'Do not', as is what stands in it behind a semicolon and an order behind a comma. */
    NEGATED {
        @Override
        Optional<String> of(String sentence, String word) {
            String order = sentence.substring(0, 1).toLowerCase(Locale.ROOT) + sentence.substring(1);
            return Optional.of(
                    "Do not " + order.replace("; ", "; do not ").replace(", point at ", ", do not point at "));
        }

        @Override
        Optional<String> ofItem(String item) {
            return Optional.of("no " + item);
        }
    },
    /** 'If you like' is put behind the sentence. */
    OPTIONAL {
        @Override
        Optional<String> of(String sentence, String word) {
            return Optional.of(sentence.replaceFirst("[.!;]*\\s*$", "") + ", if you like.");
        }

        @Override
        Optional<String> ofItem(String item) {
            return Optional.of(item + " if you like");
        }
    };

    private static final TurnReader READER = TurnReader.standard();

    /** A sentence that holds a word, disguised; empty if the way does not fit. */
    abstract Optional<String> of(String sentence, String word);

    /** A piece of gear, disguised. */
    abstract Optional<String> ofItem(String item);

    /** A text with the sentence disguised that holds a word. */
    Optional<String> inText(String text, String word) {
        List<String> sentences = Arrays.asList(text.split("(?<=[.!?])\\s+"));
        for (int at = 0; at < sentences.size(); at++) {
            if (words(sentences.get(at)).anyMatch(word::equals)) {
                Optional<String> disguised = of(sentences.get(at), word);
                int place = at;
                return disguised.map(sentence -> {
                    String[] all = sentences.toArray(String[]::new);
                    all[place] = sentence;
                    return String.join(" ", all);
                });
            }
        }
        return Optional.empty();
    }

    static Stream<String> words(String text) {
        return Stream.of(text.split("[^\\p{L}]+")).filter(word -> !word.isEmpty());
    }

    private static String longest(String text) {
        return words(text).max(Comparator.comparing(String::length)).orElse("");
    }

    /** Letters changed that make no slip, but another way of writing the word. */
    private static final Set<String> SPELLINGS = Set.of("saber");

    private static Optional<String> misspelt(String word) {
        for (int at = word.length() - 2; at >= 0; at--) {
            String slip = word.substring(0, at) + word.charAt(at + 1) + word.charAt(at) + word.substring(at + 2);
            boolean unknown = !READER.read(slip).unread().isEmpty();
            if (!slip.equalsIgnoreCase(word) && unknown && !SPELLINGS.contains(slip)) {
                return Optional.of(slip);
            }
        }
        return Optional.empty();
    }
}
