package org.drillwright.print.booklet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * Drills in layers, each behind those it needs, and in an order within the layers that lets few lines cross: layers by
 * the longest way, then sweeps that put each beside the mean of its neighbours (Sugiyama, Tagawa, Toda 1981). A line
 * over several layers has a knot in each of them.
 */
final class Chart {

    private static final int SWEEPS = 12;

    /** A drill, or a knot of a line. */
    static final class Spot {
        /** From 0; -1 for a knot. */
        final int drill;

        final int layer;

        /** What leads here. */
        final List<Spot> before = new ArrayList<>();

        /** What it leads to. */
        final List<Spot> after = new ArrayList<>();

        Spot(int drill, int layer) {
            this.drill = drill;
            this.layer = layer;
        }

        boolean isKnot() {
            return drill < 0;
        }
    }

    private final List<Set<Integer>> needs;
    private final Map<Integer, Integer> layerOf = new HashMap<>();
    private final List<List<Spot>> layers = new ArrayList<>();

    /** @param needs for each drill the numbers, from 0, of those it needs; where they go in a circle one is passed over */
    Chart(List<Set<Integer>> needs) {
        this.needs = withoutCircles(needs);
        place();
        for (int sweep = 0; sweep < SWEEPS; sweep++) {
            sweep(sweep % 2 == 0);
        }
    }

    List<List<Spot>> layers() {
        return layers;
    }

    private static List<Set<Integer>> withoutCircles(List<Set<Integer>> needs) {
        List<Set<Integer>> clean = new ArrayList<>();
        needs.forEach(some -> clean.add(new TreeSet<>()));
        for (int drill = 0; drill < needs.size(); drill++) {
            for (int need : needs.get(drill)) {
                if (need != drill && !reaches(need, drill, clean)) {
                    clean.get(drill).add(need);
                }
            }
        }
        return clean;
    }

    /** Whether a drill needs another, directly or by way of others. */
    private static boolean reaches(int from, int to, List<Set<Integer>> needs) {
        Set<Integer> seen = new HashSet<>();
        List<Integer> open = new ArrayList<>(List.of(from));
        while (!open.isEmpty()) {
            int at = open.remove(open.size() - 1);
            if (at == to) {
                return true;
            }
            if (seen.add(at)) {
                open.addAll(needs.get(at));
            }
        }
        return false;
    }

    private int layer(int drill) {
        Integer known = layerOf.get(drill);
        if (known != null) {
            return known;
        }
        int layer = needs.get(drill).stream()
                .mapToInt(need -> layer(need) + 1)
                .max()
                .orElse(0);
        layerOf.put(drill, layer);
        return layer;
    }

    private void place() {
        List<Spot> spots = new ArrayList<>();
        for (int drill = 0; drill < needs.size(); drill++) {
            Spot spot = new Spot(drill, layer(drill));
            spots.add(spot);
            into(spot);
        }
        for (int drill = 0; drill < needs.size(); drill++) {
            for (int need : needs.get(drill)) {
                if (!isBroughtByAnother(need, drill)) {
                    join(spots.get(need), spots.get(drill));
                }
            }
        }
    }

    private boolean isBroughtByAnother(int need, int drill) {
        return needs.get(drill).stream().anyMatch(other -> other != need && reaches(other, need, needs));
    }

    private void into(Spot spot) {
        while (layers.size() <= spot.layer) {
            layers.add(new ArrayList<>());
        }
        layers.get(spot.layer).add(spot);
    }

    private void join(Spot from, Spot to) {
        Spot at = from;
        for (int layer = from.layer + 1; layer < to.layer; layer++) {
            Spot knot = new Spot(-1, layer);
            into(knot);
            link(at, knot);
            at = knot;
        }
        link(at, to);
    }

    private static void link(Spot from, Spot to) {
        from.after.add(to);
        to.before.add(from);
    }

    private void sweep(boolean forward) {
        Map<Spot, Double> place = new HashMap<>();
        layers.forEach(layer -> number(layer, place));
        for (int step = 0; step < layers.size(); step++) {
            List<Spot> layer = layers.get(forward ? step : layers.size() - 1 - step);
            Map<Spot, Double> wanted = new HashMap<>();
            for (Spot spot : layer) {
                List<Spot> beside = forward ? spot.before : spot.after;
                wanted.put(
                        spot,
                        beside.stream()
                                .mapToDouble(other -> place.getOrDefault(other, 0.0))
                                .average()
                                .orElse(place.getOrDefault(spot, 0.0)));
            }
            layer.sort(Comparator.comparingDouble(spot -> wanted.getOrDefault(spot, 0.0)));
            number(layer, place);
        }
    }

    /** As a share of the layer, so that a short layer and a long one can be compared. */
    private static void number(List<Spot> layer, Map<Spot, Double> place) {
        for (int at = 0; at < layer.size(); at++) {
            place.put(layer.get(at), (at + 0.5) / layer.size());
        }
    }
}
