package org.drillwright.translation;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.drillwright.model.Language;

/**
 * A turn in another language with what it tells beside its actions: how and when, as far as {@link Adverbials} has it, and the
 * rest in the words of the original.
 *
 * @param said the turn in the other language
 * @param rest words of the original that tell what was not said; empty if nothing is lost
 */
record TranslatedTurn(String said, String rest) {

    private static final Pattern STOP = Pattern.compile("[,;:.!]");

    /** So many words stand by themselves, even if no comma parts them from the others. */
    private static final int PHRASE = 3;

    private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{M}\\p{N}’'-]+");

    /**
     * What a text is asked.
     *
     * @param same whether words, read in the language of the text, come to its actions
     * @param saysAll whether they tell no more than these
     * @param isShort whether they are no more than its actions take
     * @param saysThere whether words of the other language come to the same actions
     */
    record Asked(
            Predicate<String> same, Predicate<String> saysAll, Predicate<String> isShort, Predicate<String> saysThere) {
        private boolean tellsJust(String words) {
            return same.test(words) && saysAll.test(words) && isShort.test(words);
        }
    }

    /**
     * @param text what was written
     * @param actions the same in the other language, by its actions alone
     * @param oneAction whether there is just one, so that it does not matter where its manner stands
     */
    static TranslatedTurn of(
            String text, String actions, boolean oneAction, Language from, Language into, Asked asked) {
        String left = text;
        String said = actions;
        Optional<Adverbials.Found> next = next(left, said, oneAction, from, into, asked);
        while (next.isPresent()) {
            said = with(said, next.get());
            left = without(left, next.get());
            next = next(left, said, oneAction, from, into, asked);
        }
        // Where something is left over, what was found may belong to that and not to the action.
        return asked.saysAll().test(left)
                ? new TranslatedTurn(said, "")
                : new TranslatedTurn(actions, rest(text, Adverbials.standard().in(text, from, into), asked));
    }

    /** Of several actions only what stands last may be said, behind the last. */
    private static Optional<Adverbials.Found> next(
            String left, String said, boolean oneAction, Language from, Language into, Asked asked) {
        return Adverbials.standard().in(left, from, into).stream()
                .filter(found -> oneAction
                        || found.said().isEmpty()
                        || !WORD.matcher(left).find(found.end()))
                .filter(found -> asked.same().test(without(left, found)))
                .filter(found -> asked.saysThere().test(with(said, found)))
                .findFirst();
    }

    private static String with(String said, Adverbials.Found found) {
        String stop = said.endsWith(".") ? "." : "";
        String between = found.said().isEmpty() || found.said().startsWith(",") ? "" : " ";
        return said.substring(0, said.length() - stop.length()) + between + found.said() + stop;
    }

    private static String without(String text, Adverbials.Found found) {
        return (text.substring(0, found.start()) + text.substring(found.end()))
                .replaceAll("\\s+", " ")
                .replaceAll("[\\s,;:]+(?=[,;:.!]|$)", "")
                .replaceFirst("^[\\s,;:]+", "");
    }

    /** What stands behind the words that tell its actions, or before them as a clause; all of it if it cannot be parted so. */
    private static String rest(String text, List<Adverbials.Found> phrases, Asked asked) {
        List<MatchResult> words = WORD.matcher(text).results().toList();
        for (int next = words.size() - 1; next > 0; next--) {
            int end = words.get(next - 1).end();
            int start = words.get(next).start();
            boolean within = phrases.stream().anyMatch(phrase -> phrase.start() < start && start < phrase.end());
            if (!within && asked.tellsJust(text.substring(0, end))) {
                boolean parted = words.size() - next >= PHRASE
                        || STOP.matcher(text.substring(end, start)).find();
                return bare(parted ? text.substring(start) : text);
            }
        }
        for (int first = 1; first < words.size(); first++) {
            int start = words.get(first).start();
            boolean parted = STOP.matcher(text.substring(words.get(first - 1).end(), start))
                    .find();
            if (parted && asked.tellsJust(text.substring(start))) {
                return bare(text.substring(0, start));
            }
        }
        return bare(text);
    }

    private static String bare(String words) {
        return words.replaceAll("^[\\s,;:]+|[\\s,;:.]+$", "");
    }
}
