package org.drillwright.print.booklet;

import java.util.Collections;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * Words, each with the ids of the drills that say or work it, in the order of an index.
 *
 * @param fundamentals that the drills state
 * @param terms of the trade
 */
public record Index(Map<String, Set<String>> fundamentals, Map<String, Set<String>> terms) {

    public Index {
        fundamentals = Collections.unmodifiableMap(new TreeMap<>(fundamentals));
        terms = Collections.unmodifiableMap(new TreeMap<>(terms));
    }
}
