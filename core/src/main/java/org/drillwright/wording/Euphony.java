package org.drillwright.wording;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;

/**
 * Words that change with the sound of what stands in the gap behind them, as in Spanish 'o' and 'u octava', in Italian 'il 7'
 * and 'l’8'. A language's rules are in the file of this room: {@code before.NAME=WORD|BEGINNING|INSTEAD}, where how
 * what follows begins is a regular expression; no space is left behind an apostrophe.
 */
final class Euphony {

    private static final String KEY = "before.";

    private static final Map<String, Euphony> READ = new ConcurrentHashMap<>();

    private final List<Rule> rules;

    private Euphony(List<Rule> rules) {
        this.rules = rules;
    }

    static Euphony in(Locale language) {
        return READ.computeIfAbsent(language.getLanguage(), tag -> of(Bundle.in(Euphony.class, language)));
    }

    private static Euphony of(Bundle words) {
        return new Euphony(words.keys().stream()
                .filter(key -> key.startsWith(KEY))
                .sorted()
                .map(key -> Rule.of(words.wanted(key)))
                .toList());
    }

    /** One such word. */
    private record Rule(String word, Pattern beginning, String instead) {

        /** @throws IllegalStateException if the line has another form */
        static Rule of(String line) {
            int first = line.indexOf('|');
            int last = line.lastIndexOf('|');
            if (first <= 0 || last == first) {
                throw new IllegalStateException("not WORD|BEGINNING|INSTEAD: " + line);
            }
            return new Rule(
                    line.substring(0, first) + " ",
                    Pattern.compile(line.substring(first + 1, last)),
                    line.substring(last + 1) + (line.endsWith("’") ? "" : " "));
        }

        boolean changes(CharSequence before, String behind) {
            int at = before.length() - word.length();
            return at >= 0
                    && before.subSequence(at, before.length()).toString().equalsIgnoreCase(word)
                    && (at == 0 || !Character.isLetterOrDigit(before.charAt(at - 1)))
                    && beginning.matcher(behind).lookingAt();
        }
    }

    /** Puts the right word at the end of what was said so far, for what is said next. */
    void join(StringBuilder before, String behind) {
        rules.stream().filter(rule -> rule.changes(before, behind)).findFirst().ifPresent(rule -> {
            int at = before.length() - rule.word().length();
            boolean capital = Character.isUpperCase(before.charAt(at));
            before.setLength(at);
            before.append(rule.instead());
            if (capital) {
                before.setCharAt(at, Character.toUpperCase(before.charAt(at)));
            }
        });
    }
}
