package org.drillwright.plan.course;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.random.RandomGenerator;

/**
 * What one pass goes by. Changed by small steps from pass to pass.
 *
 * @param order in which drills become new
 * @param hold the class before which each isn't new
 * @param force the class in which each is new before all others; -1 where that isn't wished
 * @param published whether the published plan is followed where it can be
 */
record Tried(List<Integer> order, List<Integer> hold, List<Integer> force, boolean published) {

    Tried {
        order = List.copyOf(order);
        hold = List.copyOf(hold);
        force = List.copyOf(force);
    }

    static Tried in(List<Integer> order, boolean published) {
        Integer[] none = new Integer[order.size()];
        Arrays.fill(none, 0);
        Integer[] never = new Integer[order.size()];
        Arrays.fill(never, -1);
        return new Tried(order, Arrays.asList(none), Arrays.asList(never), published);
    }

    /**
     * A neighbour: a drill shifted in the order, held back, forced a little earlier, or let go.
     *
     * @param now the classes in which the drills are new now; -1 for those that aren't
     */
    Tried changed(List<Integer> now, RandomGenerator random) {
        int drill = random.nextInt(order.size());
        return switch (random.nextInt(5)) {
            case 0, 1 -> {
                List<Integer> shifted = new ArrayList<>(order);
                int moved = shifted.remove(random.nextInt(shifted.size()));
                shifted.add(random.nextInt(shifted.size() + 1), moved);
                yield new Tried(shifted, hold, force, published);
            }
            case 2 -> new Tried(order, with(hold, drill, now.get(drill) + 1), force, published);
            case 3 ->
                new Tried(
                        order,
                        with(hold, drill, 0),
                        with(force, drill, Math.max(-1, now.get(drill) - 1 - random.nextInt(2))),
                        published);
            default -> new Tried(order, with(hold, drill, 0), with(force, drill, -1), false);
        };
    }

    private static List<Integer> with(List<Integer> values, int at, int value) {
        List<Integer> changed = new ArrayList<>(values);
        changed.set(at, value);
        return changed;
    }
}
