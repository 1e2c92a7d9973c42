package org.drillwright.plan.lesson;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Drills in an order in which each comes after those it needs; otherwise the instructor's own order.
 *
 * @param drills in that order; as they stood if there is a circle
 * @param moved each drill that had to move
 * @param circle ids that need one another, if there are any
 */
record DrillOrder(List<DrillLoad> drills, List<Remark> moved, Optional<List<String>> circle) {

    public DrillOrder {
        drills = List.copyOf(drills);
        moved = List.copyOf(moved);
    }

    /** Kahn's order, of several that could come next always the one that stood first. */
    public static DrillOrder of(List<DrillLoad> wished) {
        List<DrillLoad> left = new ArrayList<>(wished);
        List<DrillLoad> ordered = new ArrayList<>();
        List<Remark> moved = new ArrayList<>();
        while (!left.isEmpty()) {
            Optional<DrillLoad> next =
                    left.stream().filter(load -> waitsFor(load, left).isEmpty()).findFirst();
            if (next.isEmpty()) {
                return new DrillOrder(wished, List.of(), Optional.of(circle(left)));
            }
            DrillLoad first = left.get(0);
            if (!first.equals(next.get()) && isNeeded(next.get(), first, left)) {
                moved.add(new Remark.Moved(next.get().drill(), first.drill()));
            }
            ordered.add(next.get());
            left.remove(next.get());
        }
        return new DrillOrder(ordered, moved, Optional.empty());
    }

    private static List<String> waitsFor(DrillLoad load, List<DrillLoad> left) {
        return load.needs().stream()
                .filter(need -> left.stream().anyMatch(other -> other.drill().equals(need)))
                .toList();
    }

    /** Whether a drill is needed by another, directly or through others. */
    private static boolean isNeeded(DrillLoad drill, DrillLoad by, List<DrillLoad> left) {
        Set<String> reached = new LinkedHashSet<>(by.needs());
        boolean grown = true;
        while (grown) {
            grown = left.stream().filter(other -> reached.contains(other.drill())).toList().stream()
                    .map(other -> reached.addAll(other.needs()))
                    .reduce(false, Boolean::logicalOr);
        }
        return reached.contains(drill.drill());
    }

    /** Walks from need to need until a drill comes round again. */
    private static List<String> circle(List<DrillLoad> left) {
        List<String> walked = new ArrayList<>();
        String at = left.get(0).drill();
        while (!walked.contains(at)) {
            walked.add(at);
            String here = at;
            DrillLoad load = left.stream()
                    .filter(other -> other.drill().equals(here))
                    .findFirst()
                    .orElseThrow();
            at = waitsFor(load, left).get(0);
        }
        return List.copyOf(walked.subList(walked.indexOf(at), walked.size()));
    }
}
