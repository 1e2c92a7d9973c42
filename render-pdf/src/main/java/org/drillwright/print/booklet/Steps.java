package org.drillwright.print.booklet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The drills of a booklet by steps: a drill's step is one more than the highest step of what it needs. */
final class Steps {

    private final Map<String, BookletEntry> entries;
    private final Map<String, Integer> steps = new HashMap<>();
    private final Set<String> open = new HashSet<>();

    private Steps(List<BookletEntry> entries) {
        this.entries =
                entries.stream().collect(Collectors.toMap(BookletEntry::id, Function.identity(), (one, other) -> one));
    }

    /** From step 1 on; in each step the drills in the order given. Of needs that go in a circle one is passed over. */
    static List<List<BookletEntry>> of(List<BookletEntry> entries) {
        Steps all = new Steps(entries);
        TreeMap<Integer, List<BookletEntry>> steps = new TreeMap<>();
        entries.forEach(entry -> steps.computeIfAbsent(all.step(entry), step -> new ArrayList<>())
                .add(entry));
        return List.copyOf(steps.values());
    }

    private int step(BookletEntry entry) {
        Integer known = steps.get(entry.id());
        if (known != null) {
            return known;
        }
        open.add(entry.id());
        int step = 1;
        for (String need : entry.drill().needs()) {
            BookletEntry needed = entries.get(need);
            if (needed != null && !open.contains(need)) {
                step = Math.max(step, step(needed) + 1);
            }
        }
        open.remove(entry.id());
        steps.put(entry.id(), step);
        return step;
    }
}
