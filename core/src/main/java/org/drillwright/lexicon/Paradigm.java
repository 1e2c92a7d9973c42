package org.drillwright.lexicon;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How the words of one kind are inflected: for each form the ending, as data of the language.
 *
 * @param name the category it belongs to, or the name that an entry asks for
 * @param lemma which words it fits
 * @param forms for each form, in the order of the file, the replacement that makes it of the lemma
 */
record Paradigm(String name, Pattern lemma, Map<String, String> forms) {

    Paradigm {
        forms = new LinkedHashMap<>(forms);
    }

    /** Reads {@code NAME PATTERN form=replacement …}; a form may stand several times. */
    static Paradigm parse(List<String> words) {
        Map<String, String> forms = new LinkedHashMap<>();
        for (String word : words.subList(2, words.size())) {
            int sign = word.indexOf('=');
            if (sign <= 0) {
                throw new IllegalArgumentException("'" + word + "' is no form of a paradigm");
            }
            forms.merge(word.substring(0, sign), word.substring(sign + 1), (one, other) -> one + "/" + other);
        }
        return new Paradigm(words.get(0), Pattern.compile("^(?:" + words.get(1) + ")$"), forms);
    }

    /** The forms of a word, each with its name; empty if the word is not of this kind. */
    Optional<List<Map.Entry<String, String>>> inflect(String word) {
        Matcher matcher = lemma.matcher(word);
        if (!matcher.matches()) {
            return Optional.empty();
        }
        List<Map.Entry<String, String>> made = new ArrayList<>();
        forms.forEach((form, endings) -> {
            for (String ending : endings.split("/")) {
                made.add(Map.entry(form, matcher.replaceFirst(ending)));
            }
        });
        return Optional.of(made);
    }
}
