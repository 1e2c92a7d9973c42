package org.drillwright.grammar;

import java.util.List;

/** Constructions that may begin with one thing, in their order. Most are left behind at their second part, so its number is at hand. */
final class Beginnings {

    static final Beginnings NONE = new Beginnings(List.of());

    private final Production[] rules;

    /** The number of the second part of each; negative if it has none. */
    private final int[] seconds;

    Beginnings(List<Production> rules) {
        this.rules = rules.toArray(Production[]::new);
        this.seconds = rules.stream()
                .mapToInt(rule -> rule.size() == 1 ? -1 : rule.child(1).number())
                .toArray();
    }

    int size() {
        return rules.length;
    }

    Production rule(int at) {
        return rules[at];
    }

    int second(int at) {
        return seconds[at];
    }
}
