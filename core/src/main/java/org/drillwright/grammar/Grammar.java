package org.drillwright.grammar;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.drillwright.lexicon.TableLines;

/**
 * The constructions of one language. Beside rules its file says which categories are nouns ({@code noun …}: each may be
 * an object or stand behind a preposition), which may follow a head behind a comma ({@code late …}), which take arguments
 * beside verbs ({@code head …}: a verb that waits for its other part), and in which forms a
 * verb stands behind its arguments ({@code final …}).
 */
public final class Grammar {

    private final Categories numbers = new Categories();
    private final List<Production> rules = new ArrayList<>();
    private final Map<String, List<Production>> byFirst = new HashMap<>();

    /** The same by the concepts that were asked for so far; there are no more than the words of the language have. */
    private final Map<String, Map<String, Beginnings>> byConcept = new ConcurrentHashMap<>();

    private final Set<String> nouns = new HashSet<>();
    private final Set<String> late = new HashSet<>();
    private final Set<String> last = new HashSet<>();
    private final List<String> heads = new ArrayList<>(List.of("VP"));
    private final Set<String> literals = new HashSet<>();
    private final Corners corners;

    private Grammar(List<String> lines) {
        Map<String, Production.Child> parts = new HashMap<>();
        for (String text : lines) {
            if (text.startsWith("noun ")) {
                nouns.addAll(Arrays.asList(text.substring(5).split("\\s+")));
            } else if (text.startsWith("late ")) {
                late.addAll(Arrays.asList(text.substring(5).split("\\s+")));
            } else if (text.startsWith("final ")) {
                last.addAll(Arrays.asList(text.substring(6).split("\\s+")));
            } else if (text.startsWith("head ")) {
                heads.addAll(Arrays.asList(text.substring(5).split("\\s+")));
            } else {
                // Most parts are written alike in many rules.
                add(Production.parse(
                        text, part -> parts.computeIfAbsent(part, word -> Production.child(word, numbers))));
            }
        }
        corners = new Corners(numbers, rules, nouns, heads);
    }

    /**
     * Builds a grammar.
     *
     * @throws IllegalArgumentException if a line is no rule, or stands twice, with the line
     */
    public static Grammar read(List<String> lines) {
        return new Grammar(TableLines.of(lines));
    }

    private void add(Production rule) {
        rules.add(rule);
        byFirst.computeIfAbsent(rule.child(0).category(), first -> new ArrayList<>())
                .add(rule);
        for (Production.Child child : rule.children()) {
            if (Production.isLiteral(child.category())) {
                literals.add(child.category().startsWith("'") ? child.category().substring(1) : child.category());
            }
        }
    }

    /**
     * The constructions whose first part is of a category and may be of a concept, in their order.
     *
     * @param concept empty for what has none
     */
    Beginnings beginningWith(String category, String concept) {
        List<Production> all = byFirst.getOrDefault(category, List.of());
        return all.isEmpty()
                ? Beginnings.NONE
                : byConcept
                        .computeIfAbsent(category, first -> new ConcurrentHashMap<>())
                        .computeIfAbsent(
                                concept,
                                asked -> new Beginnings(all.stream()
                                        .filter(rule ->
                                                rule.child(0).condition().mayHold("c", asked))
                                        .toList()));
    }

    /** The number of a category; empty if no construction asks for it. */
    OptionalInt number(String category) {
        int number = numbers.known(category);
        return number < 0 ? OptionalInt.empty() : OptionalInt.of(number);
    }

    Corners corners() {
        return corners;
    }

    boolean isNoun(String category) {
        return nouns.contains(category);
    }

    boolean mayComeLate(String sort) {
        return late.contains(sort);
    }

    /** The categories that take arguments. */
    List<String> heads() {
        return Collections.unmodifiableList(heads);
    }

    /** Whether a head of this form may stand behind all of its arguments. */
    boolean mayComeLast(String form) {
        return last.contains(form);
    }

    /** Whether a construction asks for this very word. */
    public boolean names(String word) {
        return literals.contains(word);
    }

    /** Each construction as it is written. */
    public List<String> lines() {
        return rules.stream().map(Production::line).toList();
    }

    /** Every category that a construction makes or asks for. */
    public Set<String> categories() {
        Set<String> all = new HashSet<>(nouns);
        for (Production rule : rules) {
            all.add(rule.parent());
            rule.children().stream()
                    .map(Production.Child::category)
                    .filter(name -> !Production.isLiteral(name))
                    .forEach(all::add);
        }
        return all;
    }
}
