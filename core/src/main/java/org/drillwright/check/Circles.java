package org.drillwright.check;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.drillwright.model.Drill;

/** Finds drills whose needs lead into a circle. */
public final class Circles {

    private Circles() {}

    /**
     * The ids of all drills that cannot be taught after all that they need, since a need leads round: what is left when
     * again and again each drill is taken away that needs none of those left.
     */
    public static Set<String> ledInto(Map<String, Drill> drills) {
        Map<String, Integer> open = new HashMap<>();
        Map<String, List<String>> neededBy = new HashMap<>();
        Deque<String> free = new ArrayDeque<>();
        drills.forEach((id, drill) -> {
            Set<String> needs = new HashSet<>(drill.needs());
            needs.retainAll(drills.keySet());
            needs.forEach(need ->
                    neededBy.computeIfAbsent(need, none -> new ArrayList<>()).add(id));
            open.put(id, needs.size());
            if (needs.isEmpty()) {
                free.add(id);
            }
        });
        while (!free.isEmpty()) {
            String taken = free.remove();
            open.remove(taken);
            for (String id : neededBy.getOrDefault(taken, List.of())) {
                if (open.merge(id, -1, Integer::sum) == 0) {
                    free.add(id);
                }
            }
        }
        return Set.copyOf(open.keySet());
    }
}
