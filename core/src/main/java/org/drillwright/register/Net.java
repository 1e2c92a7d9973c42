package org.drillwright.register;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Facts and how often each stands: told lines count up, lines that take back count down. The same meeting told from either
 * side is one fact.
 */
final class Net {

    private final Map<Entry, Integer> counts = new LinkedHashMap<>();
    private final Map<Entry, Entry> asTold = new HashMap<>();

    static Net of(Collection<Entry> entries) {
        Net net = new Net();
        entries.forEach(entry -> net.add(RecordLine.told(entry)));
        return net;
    }

    Net add(RecordLine line) {
        asTold.putIfAbsent(line.entry().plain(), line.entry());
        counts.merge(line.entry().plain(), line.takenBack() ? -1 : 1, Integer::sum);
        return this;
    }

    /** Whether no fact stands. */
    boolean isEmpty() {
        return counts.values().stream().noneMatch(count -> count > 0);
    }

    int of(Entry entry) {
        return counts.getOrDefault(entry.plain(), 0);
    }

    /** What this has more often than another, each as many times, in the order in which it was first told. */
    List<Entry> beyond(Net other) {
        List<Entry> more = new ArrayList<>();
        counts.forEach((entry, count) -> {
            for (int at = other.of(entry); at < count; at++) {
                more.add(asTold.getOrDefault(entry, entry));
            }
        });
        return more;
    }
}
