package org.drillwright.grammar;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** Which phrases may begin with which: by the constructions, and by what is built into the {@link Chart}. */
final class Corners {

    /** What the chart makes of a category, and so may begin with it. */
    private static final Map<String, List<String>> BUILT_IN = Map.of(
            "NP", List.of("ARG"),
            "ADV", List.of("ARG"),
            "P", List.of("ARG"),
            ",", List.of("ARG"),
            "V", List.of("VP"),
            "ACTN", List.of("VP"),
            "VP", List.of("ACT", "S"),
            "ACT", List.of("NP"));

    private final Categories categories;

    /** By number, the categories that a construction makes of something that begins so. */
    private final Map<Integer, List<Integer>> wholes = new HashMap<>();

    private final Map<Integer, BitSet> known = new ConcurrentHashMap<>();

    Corners(Categories categories, Collection<Production> rules, Collection<String> nouns, Collection<String> heads) {
        this.categories = categories;
        rules.forEach(rule -> begins(rule.child(0).category(), rule.parent()));
        nouns.forEach(noun -> begins(noun, "NP"));
        heads.forEach(head -> begins("ARG", head));
        BUILT_IN.forEach((first, made) -> made.forEach(whole -> begins(first, whole)));
    }

    private void begins(String first, String whole) {
        wholes.computeIfAbsent(categories.number(first), key -> new ArrayList<>(2))
                .add(categories.number(whole));
    }

    /** Adds the number of a category and of all that may begin with it. */
    void addBeginningWith(String category, BitSet numbers) {
        int number = categories.known(category);
        if (number >= 0) {
            numbers.or(known.computeIfAbsent(number, this::beginningWith));
        }
    }

    private BitSet beginningWith(int first) {
        BitSet found = new BitSet();
        Deque<Integer> open = new ArrayDeque<>(List.of(first));
        while (!open.isEmpty()) {
            int category = open.pop();
            if (!found.get(category)) {
                found.set(category);
                open.addAll(wholes.getOrDefault(category, List.of()));
            }
        }
        return found;
    }
}
