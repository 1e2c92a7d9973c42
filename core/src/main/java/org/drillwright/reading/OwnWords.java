package org.drillwright.reading;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillwright.lexicon.Token;

/**
 * A school's own words: wherever they stand, they are read as the words that say the same. A verb that stands for a verb
 * takes its endings.
 */
final class OwnWords {

    static final OwnWords NONE = new OwnWords(Map.of());

    /** For each way to say it, cut into words, the words that it stands for. */
    private final Map<List<String>, List<String>> words;

    private final int longest;

    private OwnWords(Map<List<String>, List<String>> words) {
        this.words = words;
        this.longest = words.keySet().stream().mapToInt(List::size).max().orElse(0);
    }

    static OwnWords of(Map<String, String> words, LanguageTables tongue) {
        Map<List<String>, List<String>> all = new LinkedHashMap<>();
        words.forEach((say, means) -> {
            all.put(tongue.words(say), tongue.words(means));
            tongue.lexicon()
                    .inflected(say, means)
                    .forEach((form, known) -> all.put(tongue.words(form), tongue.words(known)));
        });
        all.remove(List.of());
        return all.isEmpty() ? NONE : new OwnWords(all);
    }

    boolean isEmpty() {
        return words.isEmpty();
    }

    /** The sentence with own words replaced by what they stand for; each new word keeps the place of the old ones. */
    List<Token> in(List<Token> sentence) {
        if (words.isEmpty()) {
            return sentence;
        }
        List<Token> read = new ArrayList<>();
        int at = 0;
        while (at < sentence.size()) {
            Optional<Integer> length = longestAt(sentence, at);
            if (length.isEmpty()) {
                read.add(sentence.get(at));
                at++;
                continue;
            }
            int end = at + length.get();
            var span = sentence.get(at).span().to(sentence.get(end - 1).span());
            for (String word : words.getOrDefault(folded(sentence, at, end), List.of())) {
                read.add(new Token(word, span));
            }
            at = end;
        }
        return Collections.unmodifiableList(read);
    }

    private Optional<Integer> longestAt(List<Token> sentence, int at) {
        for (int length = Math.min(longest, sentence.size() - at); length > 0; length--) {
            if (words.containsKey(folded(sentence, at, at + length))) {
                return Optional.of(length);
            }
        }
        return Optional.empty();
    }

    private static List<String> folded(List<Token> sentence, int from, int to) {
        return sentence.subList(from, to).stream().map(Token::folded).toList();
    }
}
