package org.drillwright.school;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.Set;
import org.drillwright.model.Drill;

/** Puts drills in order whose needs lead into no circle: each next is the first of whom all needs have come. */
final class NeedsFirst {

    private final Map<String, Drill> drills;
    private final List<String> wanted;
    private final Map<String, Integer> numbers = new HashMap<>();
    private final Map<String, Integer> open = new HashMap<>();
    private final Map<String, List<String>> neededBy = new HashMap<>();
    private final PriorityQueue<Integer> ready = new PriorityQueue<>();

    /** @param wanted ids to be put in order, each once; a need may lead over drills that are not among them */
    NeedsFirst(Map<String, Drill> drills, List<String> wanted) {
        this.drills = drills;
        this.wanted = wanted;
        for (int number = 0; number < wanted.size(); number++) {
            numbers.put(wanted.get(number), number);
        }
    }

    List<String> order() {
        gather();
        open.entrySet().stream()
                .filter(waits -> waits.getValue() == 0)
                .map(Map.Entry::getKey)
                .toList()
                .forEach(this::free);
        List<String> order = new ArrayList<>();
        while (!ready.isEmpty()) {
            String next = wanted.get(ready.remove());
            order.add(next);
            come(next);
        }
        return order;
    }

    /** All that is needed, directly or by way of others, and how many needs each waits for. */
    private void gather() {
        Deque<String> met = new ArrayDeque<>(wanted);
        while (!met.isEmpty()) {
            String id = met.remove();
            if (open.containsKey(id)) {
                continue;
            }
            Drill drill = drills.get(id);
            Set<String> needs = drill == null ? Set.of() : new HashSet<>(drill.needs());
            open.put(id, needs.size());
            for (String need : needs) {
                neededBy.computeIfAbsent(need, none -> new ArrayList<>()).add(id);
                met.add(need);
            }
        }
    }

    /** A drill that waits for nothing has its turn; one that is not wanted is passed over at once. */
    private void free(String id) {
        Integer number = numbers.get(id);
        if (number == null) {
            come(id);
        } else {
            ready.add(number);
        }
    }

    private void come(String id) {
        for (String waiting : neededBy.getOrDefault(id, List.of())) {
            if (open.merge(waiting, -1, Integer::sum) == 0) {
                free(waiting);
            }
        }
    }
}
