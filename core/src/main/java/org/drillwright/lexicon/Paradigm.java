package org.drillwright.lexicon;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How the words of one kind are inflected: for each form the ending, as data of the language.
 *
 * @param names the categories it belongs to, or the name that an entry asks for
 * @param ending letters that each of its words ends with: most words are of another kind, and are seen to be by these
 * @param lemma which words it fits
 * @param forms for each form, in the order of the file, what makes it of the lemma
 */
record Paradigm(Set<String> names, String ending, Pattern lemma, Map<String, List<String>> forms) {

    Paradigm {
        names = Set.copyOf(names);
        forms = new LinkedHashMap<>(forms);
    }

    /** Reads {@code NAME|NAME PATTERN form=replacement …}; a form may stand several times. */
    static Paradigm parse(List<String> words) {
        Map<String, List<String>> forms = new LinkedHashMap<>();
        for (String word : words.subList(2, words.size())) {
            int sign = word.indexOf('=');
            if (sign <= 0) {
                throw new IllegalArgumentException("'" + word + "' is no form of a paradigm");
            }
            forms.computeIfAbsent(word.substring(0, sign), form -> new ArrayList<>())
                    .addAll(List.of(word.substring(sign + 1).split("/")));
        }
        return new Paradigm(
                Set.of(words.get(0).split("\\|")), ending(words.get(1)), Pattern.compile(words.get(1)), forms);
    }

    private static String ending(String pattern) {
        int from = pattern.length();
        while (from > 0 && Character.isLetter(pattern.charAt(from - 1))) {
            from--;
        }
        return pattern.indexOf('|') < 0 ? pattern.substring(from) : "";
    }

    /** The forms of a word, each with its name; empty if the word is not of this kind. */
    Optional<List<Map.Entry<String, String>>> inflect(String word) {
        if (!word.endsWith(ending)) {
            return Optional.empty();
        }
        Matcher matcher = lemma.matcher(word);
        if (!matcher.matches()) {
            return Optional.empty();
        }
        List<Map.Entry<String, String>> made = new ArrayList<>();
        forms.forEach((form, templates) ->
                templates.forEach(template -> made.add(Map.entry(form, filled(template, matcher)))));
        return Optional.of(made);
    }

    /** A template with the groups that it names: {@code $0} is the whole word. */
    private static String filled(String template, MatchResult groups) {
        StringBuilder word = new StringBuilder();
        for (int at = 0; at < template.length(); at++) {
            if (template.charAt(at) == '$') {
                at++;
                word.append(Objects.requireNonNullElse(groups.group(template.charAt(at) - '0'), ""));
            } else {
                word.append(template.charAt(at));
            }
        }
        return word.toString();
    }
}
