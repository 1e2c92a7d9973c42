package org.drillwright.school;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.drillwright.model.Drill;

/**
 * Puts drills behind those they need. Otherwise the order stays as it was: each next is the first of whom all needs have
 * come, so an order that keeps all needs is not touched. A drill in a circle of needs, which is a finding, stays behind
 * the others.
 */
final class TeachingOrder {

    private final Map<String, Drill> drills;
    private final Map<String, Set<String>> before = new HashMap<>();

    /** @param drills all of the school by their ids: a need may lead over a drill that is not put in order here */
    TeachingOrder(Map<String, Drill> drills) {
        this.drills = Map.copyOf(drills);
    }

    List<String> of(List<String> ids) {
        List<String> left = new ArrayList<>(new LinkedHashSet<>(ids));
        List<String> order = new ArrayList<>();
        while (!left.isEmpty()) {
            String next = left.stream()
                    .filter(id -> left.stream().noneMatch(needs(id)::contains))
                    .findFirst()
                    .orElse(left.get(0));
            left.remove(next);
            order.add(next);
        }
        return order;
    }

    /** All that a drill needs, directly or by way of others; not itself. */
    private Set<String> needs(String id) {
        return before.computeIfAbsent(id, this::reached);
    }

    private Set<String> reached(String id) {
        Set<String> reached = new HashSet<>();
        List<String> open = new ArrayList<>(List.of(id));
        while (!open.isEmpty()) {
            Drill drill = drills.get(open.remove(open.size() - 1));
            for (String need : drill == null ? List.<String>of() : drill.needs()) {
                if (!need.equals(id) && reached.add(need)) {
                    open.add(need);
                }
            }
        }
        return reached;
    }
}
