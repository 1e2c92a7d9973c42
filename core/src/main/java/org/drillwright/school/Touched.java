package org.drillwright.school;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.drillwright.check.Surroundings;
import org.drillwright.model.Drill;

/**
 * The drills on which it bears that a school has changed: those that lead, by what they need or vary, to a drill that
 * has come, gone, or changed its level or needs; and, when ids have come or gone, those that name an id which is not
 * there, since the nearest that is there is proposed.
 */
final class Touched {

    private final Surroundings before;
    private final Surroundings after;
    private final Map<String, List<String>> namedBy = new HashMap<>();

    private Touched(Surroundings before, Surroundings after) {
        this.before = before;
        this.after = after;
        Stream.of(before, after)
                .flatMap(school -> school.drills().values().stream())
                .forEach(drill -> named(drill)
                        .forEach(id -> namedBy.computeIfAbsent(id, none -> new ArrayList<>())
                                .add(drill.id())));
    }

    /** Their ids, and those of the drills that changed so. */
    static Set<String> between(Surroundings before, Surroundings after) {
        return new Touched(before, after).ids();
    }

    private Set<String> ids() {
        Set<String> touched = new HashSet<>(changed());
        if (!before.drills().keySet().equals(after.drills().keySet())) {
            after.drills().values().stream()
                    .filter(this::namesNone)
                    .map(Drill::id)
                    .forEach(touched::add);
        }
        Deque<String> open = new ArrayDeque<>(touched);
        while (!open.isEmpty()) {
            for (String id : namedBy.getOrDefault(open.remove(), List.of())) {
                if (touched.add(id)) {
                    open.add(id);
                }
            }
        }
        return touched;
    }

    private Set<String> changed() {
        Set<String> changed = new HashSet<>();
        Stream.of(before.drills(), after.drills())
                .flatMap(drills -> drills.keySet().stream())
                .filter(id -> !isAsBefore(id))
                .forEach(changed::add);
        Stream.of(before.unread(), after.unread())
                .flatMap(Set::stream)
                .filter(id -> before.unread().contains(id) != after.unread().contains(id))
                .forEach(changed::add);
        return changed;
    }

    private boolean isAsBefore(String id) {
        Drill old = before.drills().get(id);
        Drill now = after.drills().get(id);
        if (old == null || now == null) {
            return old == null && now == null;
        }
        return old.level().equals(now.level())
                && old.needs().equals(now.needs())
                && old.variantOf().equals(now.variantOf());
    }

    private boolean namesNone(Drill drill) {
        return named(drill).anyMatch(id -> !after.drills().containsKey(id));
    }

    private static Stream<String> named(Drill drill) {
        return Stream.concat(drill.needs().stream(), drill.variantOf().stream());
    }
}
