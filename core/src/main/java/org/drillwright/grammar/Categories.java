package org.drillwright.grammar;

import java.util.HashMap;
import java.util.Map;

/** The categories of a grammar by number, words and signs that stand for themselves among them. */
final class Categories {

    private final Map<String, Integer> numbers = new HashMap<>();

    /** The number of a category; a new one if it has none yet. */
    int number(String category) {
        return numbers.computeIfAbsent(category, name -> numbers.size());
    }

    /** The number of a category; negative if nothing in the grammar asks for it. */
    int known(String category) {
        return numbers.getOrDefault(category, -1);
    }
}
