package org.drillwright.meaning;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.drillwright.lexicon.Features;

/**
 * Actions with blanks that features fill: {@code strike $role/attack $path? $h? ; lunge $depth?}. {@code $x} must be there,
 * {@code $x?} may be missing, {@code on-$x?} puts letters before it, {@code $x/$y/word} takes the first that is there. {@code &} stands for what an argument means
 * by itself, {@code &parry} for the same with a hand's way read as a parry.
 *
 * @param uses the features that it says
 */
record ActionTemplate(List<List<String>> actions, Set<String> uses) {

    static final String CONCEPT = "concept";

    ActionTemplate {
        actions = actions.stream().map(List::copyOf).toList();
        uses = Set.copyOf(uses);
    }

    static ActionTemplate parse(String text) {
        List<List<String>> actions = new ArrayList<>();
        for (String action : text.split(";")) {
            if (!action.isBlank()) {
                actions.add(List.of(action.strip().split("\\s+")));
            }
        }
        return new ActionTemplate(actions, uses(actions));
    }

    private static Set<String> uses(List<List<String>> actions) {
        Set<String> names = new TreeSet<>();
        for (List<String> action : actions) {
            for (String word : action) {
                for (String choice : word.split("/")) {
                    if (choice.contains("$")) {
                        names.add(choice.substring(choice.indexOf('$') + 1).replace("?", ""));
                    }
                }
            }
        }
        return names;
    }

    /** The actions in their short form; empty if a feature is missing. */
    Optional<List<String>> filled(Features features, String concept) {
        List<String> texts = new ArrayList<>();
        for (List<String> action : actions) {
            List<String> words = new ArrayList<>();
            for (String word : action) {
                int blank = Math.max(0, word.indexOf('$'));
                Optional<String> said = word.contains("$")
                        ? value(word.substring(blank), features, concept)
                                .map(value -> value.isEmpty() ? value : word.substring(0, blank) + value)
                        : Optional.of(word);
                if (said.isEmpty()) {
                    return Optional.empty();
                }
                if (!said.get().isEmpty()) {
                    words.add(said.get());
                }
            }
            texts.add(String.join(" ", words));
        }
        return Optional.of(texts);
    }

    /** What stands in a blank; empty text where nothing has to. */
    private static Optional<String> value(String word, Features features, String concept) {
        boolean optional = word.endsWith("?");
        String plain = optional ? word.substring(0, word.length() - 1) : word;
        for (String choice : plain.split("/")) {
            if (!choice.startsWith("$")) {
                return Optional.of(choice.equals("-") ? "" : choice);
            }
            Optional<String> found = choice.equals("$" + CONCEPT)
                    ? Optional.of(concept.toLowerCase(Locale.ROOT))
                    : features.get(choice.substring(1)).filter(value -> !value.equals("none"));
            if (found.isPresent()) {
                return found;
            }
        }
        return optional ? Optional.of("") : Optional.empty();
    }
}
