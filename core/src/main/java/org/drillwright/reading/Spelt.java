package org.drillwright.reading;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.drillwright.lexicon.Lexicon;
import org.drillwright.lexicon.Spelling;

/**
 * How words beside each other are spelt: a vowel is left out before another, articles and adjectives agree with their noun,
 * small words become one. Which words do so is data; how they are joined is the language's list of words written as one,
 * read backwards.
 */
final class Spelt {

    /** A noun's gender and number, by the word. */
    private final Map<String, String> nouns = new HashMap<>();

    /** For a word that agrees, its other forms by gender and number. */
    private final Map<String, Map<String, String>> agreeing = new HashMap<>();

    /** Words that agree with the noun before them; others look ahead. */
    private final Set<String> behind = new HashSet<>();

    private final List<Joint> joints = new ArrayList<>();
    private Pattern vowel = Pattern.compile("[aeiou].*");

    /**
     * Words that are written as one.
     *
     * @param elided whether only before a vowel
     */
    private record Joint(List<String> words, String written, boolean elided) {}

    private Spelt() {}

    /**
     * Reads notes: {@code vowel PATTERN}, {@code noun f WORD …}, {@code before WORD f=FORM …} (a word that agrees with the noun
     * behind it), {@code after WORD f=FORM …} (with the one before it), {@code join WRITTEN …} (clitics of the language).
     *
     * @throws IllegalArgumentException if a note cannot be used
     */
    static Spelt read(List<String> notes, Lexicon lexicon) {
        Spelt spelt = new Spelt();
        Map<String, List<String>> clitics = lexicon.clitics();
        for (String note : notes) {
            List<String> words = Arrays.asList(note.split("\\s+"));
            List<String> rest = words.subList(2, words.size());
            switch (words.get(0)) {
                case "vowel" -> spelt.vowel = Pattern.compile(words.get(1));
                case "noun" -> rest.forEach(noun -> spelt.nouns.put(noun, words.get(1)));
                case "before" -> spelt.agreeing.put(words.get(1), forms(rest));
                case "after" -> {
                    spelt.agreeing.put(words.get(1), forms(rest));
                    spelt.behind.add(words.get(1));
                }
                case "join" -> words.subList(1, words.size()).forEach(written -> spelt.join(written, clitics));
                default -> throw new IllegalArgumentException("no note on words: " + note);
            }
        }
        spelt.joints.sort(Comparator.comparingInt(joint -> -joint.words().size()));
        return spelt;
    }

    private void join(String written, Map<String, List<String>> clitics) {
        List<String> words = clitics.get(written);
        if (words == null) {
            throw new IllegalArgumentException("'" + written + "' is not among the words written as one");
        }
        joints.add(new Joint(words, written, written.endsWith("'")));
    }

    private static Map<String, String> forms(List<String> words) {
        Map<String, String> forms = new HashMap<>();
        for (String word : words) {
            int sign = word.indexOf('=');
            forms.put(word.substring(0, sign), word.substring(sign + 1));
        }
        return forms;
    }

    /** The words as text. */
    String text(List<String> plain) {
        List<String> words = joined(agreed(joined(plain, true)), false);
        StringBuilder text = new StringBuilder();
        for (String word : words) {
            boolean apart = text.length() > 0 && !word.equals(",") && text.charAt(text.length() - 1) != '\'';
            text.append(apart ? " " : "").append(word);
        }
        return text.toString();
    }

    private List<String> joined(List<String> words, boolean elided) {
        List<String> result = new ArrayList<>();
        int at = 0;
        while (at < words.size()) {
            Joint joint = jointAt(words, at, elided);
            result.add(joint.written());
            at += joint.words().size();
        }
        return result;
    }

    /** The longest way to write what begins here as one; the word itself if there is none. */
    private Joint jointAt(List<String> words, int at, boolean elided) {
        for (Joint joint : joints) {
            int end = at + joint.words().size();
            if (joint.elided() == elided
                    && end <= words.size()
                    && words.subList(at, end).stream()
                            .map(Spelling::fold)
                            .toList()
                            .equals(joint.words())
                    && (!elided
                            || (end < words.size()
                                    && vowel.matcher(words.get(end)).matches()))) {
                return joint;
            }
        }
        return new Joint(List.of(words.get(at)), words.get(at), false);
    }

    private List<String> agreed(List<String> words) {
        List<String> result = new ArrayList<>();
        for (int at = 0; at < words.size(); at++) {
            String word = words.get(at);
            Map<String, String> forms = agreeing.getOrDefault(word, Map.of());
            result.add(forms.isEmpty() ? word : forms.getOrDefault(noun(words, at, behind.contains(word)), word));
        }
        return result;
    }

    /** Gender and number of the nearest noun on one side; empty text if there is none. */
    private String noun(List<String> words, int from, boolean back) {
        for (int at = from; at >= 0 && at < words.size(); at += back ? -1 : 1) {
            String kind = nouns.get(words.get(at));
            if (kind != null) {
                return kind;
            }
        }
        return "";
    }
}
