package org.drillwright.reading;

import java.util.HashMap;
import java.util.Map;
import java.util.function.Function;

/** What was found out lately, so that the same question is not worked out twice: bounded, and safe for several threads. */
final class Lately<K, V> {

    private static final int REMEMBERED = 4000;

    private final Map<K, V> known = new HashMap<>();

    /** The answer to a question; worked out, outside the lock, if it was not asked lately. */
    V ask(K question, Function<K, V> answer) {
        synchronized (known) {
            V before = known.get(question);
            if (before != null) {
                return before;
            }
        }
        V found = answer.apply(question);
        synchronized (known) {
            if (known.size() >= REMEMBERED) {
                known.clear();
            }
            known.put(question, found);
        }
        return found;
    }
}
