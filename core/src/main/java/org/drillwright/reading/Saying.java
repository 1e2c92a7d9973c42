package org.drillwright.reading;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.drillwright.lexicon.Condition;
import org.drillwright.lexicon.Features;
import org.drillwright.lexicon.Lexicon;
import org.drillwright.meaning.ActionText;
import org.drillwright.notation.Action;
import org.drillwright.notation.Measure;
import org.drillwright.notation.MeasureCue;
import org.drillwright.notation.Stance;

/**
 * How a language says an action, the reader's way backwards: rules that turn the words of {@link ActionText} into words of
 * the language. Of the ways that there are the first is taken that leaves nothing of the action out.
 */
final class Saying {

    /** The part that a sentence is. */
    private static final String ORDER = "ORDER";

    /** The part that a second action is behind the first: 'with a lunge'. */
    private static final String WITH = "WITH";

    /** The part that a measure is in a distance cue. */
    private static final String CUE = "CUE";

    /** What a cue of two measures is put into. */
    private static final String CUES = "CUES";

    private static final String TIMES = "times";

    /** Stands for the number of times. */
    private static final String NUMBER = "#";

    private final Map<String, List<SayingRule>> rules;
    private final Spelt spelt;

    private Saying(Map<String, List<SayingRule>> rules, Spelt spelt) {
        this.rules = rules;
        this.spelt = spelt;
    }

    /**
     * Builds the rules of a language.
     *
     * @throws IllegalArgumentException if a line cannot be used, with the line
     */
    static Saying read(List<String> lines, Lexicon lexicon) {
        Map<String, List<SayingRule>> rules = new LinkedHashMap<>();
        List<String> notes = new ArrayList<>();
        for (String line : lines) {
            String text = line.replaceFirst("(^|\\s)# .*", "").strip();
            if (text.isEmpty()) {
                continue;
            }
            if (Character.isLowerCase(text.charAt(0))) {
                notes.add(text);
            } else {
                SayingRule rule = SayingRule.parse(text);
                rules.computeIfAbsent(rule.name(), key -> new ArrayList<>()).add(rule);
            }
        }
        rules.values()
                .forEach(some -> some.forEach(rule -> rule.children().stream()
                        .filter(child -> SayingRule.isPart(child) && !rules.containsKey(child))
                        .findFirst()
                        .ifPresent(child -> {
                            throw new IllegalArgumentException("no rule says " + child + " in " + rule);
                        })));
        return new Saying(rules, Spelt.read(notes, lexicon));
    }

    /** An action as an order, without capital and stop; empty if the language has no words for all of it. */
    Optional<String> order(Action action) {
        return said(ORDER, action);
    }

    /** Every order that leaves nothing of an action out, with its words as they are spelt. */
    List<String> orders(Action action) {
        Features features = features(action);
        Set<String> all = Set.copyOf(features.names());
        return ways(ORDER, features).stream()
                .filter(way -> way.told().containsAll(all))
                .map(way -> spelt.text(way.words()))
                .toList();
    }

    /** An action as what is done with the one before it; empty if it cannot be said so. */
    Optional<String> with(Action action) {
        return said(WITH, action);
    }

    /** A distance cue: one measure, or two. */
    String cue(MeasureCue cue) {
        if (cue.isOne()) {
            return spelt.text(cueWords(cue.from()));
        }
        List<String> words = new ArrayList<>();
        Measure next = cue.from();
        for (String child : rule(CUES).children()) {
            words.addAll(child.equals(CUE) ? cueWords(next) : List.of(child));
            next = child.equals(CUE) ? cue.to() : next;
        }
        return spelt.text(words);
    }

    private SayingRule rule(String part) {
        return rules.getOrDefault(part, List.of()).stream()
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("no rule says " + part));
    }

    private List<String> cueWords(Measure measure) {
        Features features = features(new Action.State(Optional.of(measure), Stance.UNSTATED));
        return ways(CUE, features).get(0).words();
    }

    /** A sentence: capital and full stop. */
    static String sentence(String words) {
        int first = words.offsetByCodePoints(0, 1);
        return words.substring(0, first).toUpperCase(java.util.Locale.ROOT) + words.substring(first) + ".";
    }

    /** What is put between an order and the one behind it. */
    String then() {
        return String.join(
                " ",
                rules.getOrDefault("THEN", List.of()).stream()
                        .flatMap(rule -> rule.children().stream())
                        .toList());
    }

    /** Every word that the rules use, as it is spelt there. */
    Set<String> words() {
        Set<String> words = new HashSet<>();
        rules.values()
                .forEach(some -> some.forEach(rule -> rule.children().stream()
                        .filter(child -> !SayingRule.isPart(child) && Character.isLetter(child.codePointAt(0)))
                        .forEach(words::add)));
        return words;
    }

    /**
     * A way to say some of an action.
     *
     * @param words in their plain forms
     * @param told which words of the action it says
     */
    private record Way(List<String> words, Set<String> told) {

        static final Way EMPTY = new Way(List.of(), Set.of());

        Way and(Way more) {
            List<String> both = new ArrayList<>(words);
            both.addAll(more.words);
            return new Way(both, union(told, more.told));
        }

        Way telling(Condition asked) {
            Set<String> more = new HashSet<>();
            for (Condition.Test test : asked.tests()) {
                if (!test.absent()) {
                    more.add(test.name());
                }
            }
            return new Way(words, union(told, more));
        }

        private static Set<String> union(Set<String> some, Set<String> more) {
            Set<String> all = new HashSet<>(some);
            all.addAll(more);
            return all;
        }
    }

    private Optional<String> said(String part, Action action) {
        Features features = features(action);
        Set<String> all = Set.copyOf(features.names());
        return ways(part, features).stream()
                .filter(way -> way.told().containsAll(all))
                .findFirst()
                .map(way -> spelt.text(way.words()));
    }

    /** The words of an action, and the number of times. */
    private static Features features(Action action) {
        Map<String, String> values = new TreeMap<>();
        for (String word : ActionText.of(action).split(" ")) {
            boolean number = Character.isDigit(word.charAt(0));
            values.put(number ? TIMES : word, number ? word : Features.PRESENT);
        }
        return Features.of(values);
    }

    private List<Way> ways(String part, Features features) {
        List<Way> found = new ArrayList<>();
        for (SayingRule rule : rules.getOrDefault(part, List.of())) {
            if (rule.asked().holds(features)) {
                List<Way> ways = List.of(Way.EMPTY.telling(rule.asked()));
                for (String child : rule.children()) {
                    ways = extended(ways, child, features);
                }
                found.addAll(ways);
            }
        }
        return found;
    }

    private List<Way> extended(List<Way> ways, String child, Features features) {
        List<Way> more = SayingRule.isPart(child)
                ? ways(child, features)
                : List.of(new Way(
                        List.of(child.equals(NUMBER) ? features.get(TIMES).orElse(child) : child), Set.of()));
        List<Way> both = new ArrayList<>();
        for (Way way : ways) {
            for (Way next : more) {
                both.add(way.and(next));
            }
        }
        return both;
    }
}
