package org.drillwright.model;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.IntStream;

/** Drills by what sets name them by, so that a set's drills are found without asking every drill of a large school. */
public final class Shelves {

    private final List<Drill> drills;
    private final Map<String, List<Integer>> byId = new HashMap<>();
    private final Map<String, List<Integer>> byTag = new HashMap<>();
    private final Map<String, List<Integer>> byLevel = new HashMap<>();

    /** @param drills in an order that is kept; ids may come twice */
    public Shelves(Collection<Drill> drills) {
        this.drills = List.copyOf(drills);
        for (int at = 0; at < this.drills.size(); at++) {
            Drill drill = this.drills.get(at);
            put(byId, drill.id(), at);
            put(byLevel, drill.level(), at);
            for (String tag : new TreeSet<>(drill.tags())) {
                put(byTag, tag, at);
            }
        }
    }

    private static void put(Map<String, List<Integer>> shelf, String key, int at) {
        shelf.computeIfAbsent(key, none -> new ArrayList<>()).add(at);
    }

    /** Which drills a set holds: their numbers from 0, in order. */
    public List<Integer> numbers(DrillSet set) {
        if (set.isListed()) {
            return set.drills().stream()
                    .distinct()
                    .flatMap(id -> byId.getOrDefault(id, List.of()).stream())
                    .sorted()
                    .toList();
        }
        return candidates(set).stream().filter(at -> set.holds(drills.get(at))).toList();
    }

    /** The drills that a set holds, in order. */
    public List<Drill> drills(DrillSet set) {
        return numbers(set).stream().map(drills::get).toList();
    }

    private List<Integer> candidates(DrillSet set) {
        return set.tag()
                .map(tag -> byTag.getOrDefault(tag, List.of()))
                .or(() -> set.level().map(level -> byLevel.getOrDefault(level, List.of())))
                .orElseGet(() -> IntStream.range(0, drills.size()).boxed().toList());
    }
}
