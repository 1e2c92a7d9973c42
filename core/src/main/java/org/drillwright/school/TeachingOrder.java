package org.drillwright.school;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.drillwright.check.Circles;
import org.drillwright.model.Drill;

/**
 * Puts drills behind those they need. Otherwise the order stays as it was: each next is the first of whom all needs have
 * come, so an order that keeps all needs is not touched. A drill in a circle of needs, which is a finding, stays behind
 * the others.
 */
final class TeachingOrder {

    private final Map<String, Drill> drills;
    private final Set<String> circling;

    /** @param drills all of the school by their ids: a need may lead over a drill that is not put in order here */
    TeachingOrder(Map<String, Drill> drills) {
        this.drills = Map.copyOf(drills);
        this.circling = Circles.ledInto(drills);
    }

    List<String> of(List<String> ids) {
        List<String> wanted = List.copyOf(new LinkedHashSet<>(ids));
        return wanted.stream().anyMatch(circling::contains)
                ? withCircles(wanted)
                : new NeedsFirst(drills, wanted).order();
    }

    /** Slow where many drills are left behind a circle; a circle is an error and soon mended. */
    List<String> withCircles(List<String> wanted) {
        Map<String, Set<String>> before = new HashMap<>();
        wanted.forEach(id -> before.put(id, reached(id)));
        List<String> left = new ArrayList<>(wanted);
        List<String> order = new ArrayList<>();
        while (!left.isEmpty()) {
            String next = left.stream()
                    .filter(id -> left.stream().noneMatch(needs(id, before)::contains))
                    .findFirst()
                    .orElse(left.get(0));
            left.remove(next);
            order.add(next);
        }
        return order;
    }

    private static Set<String> needs(String id, Map<String, Set<String>> before) {
        return before.getOrDefault(id, Set.of());
    }

    /** All that a drill needs, directly or by way of others; not itself. */
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
