package org.drillwright.print.booklet;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.drillwright.print.booklet.Chart.Spot;

/**
 * Heights on the page for the spots of a chart: each as near to its neighbours as its layer lets it.
 *
 * @param room from top to bottom, in points
 * @param box a drill's height
 * @param knot a line's height
 * @param gap between two
 */
record Spread(double room, double box, double knot, double gap) {

    private static final int ROUNDS = 24;

    boolean holds(List<Spot> layer) {
        return layer.stream().mapToDouble(this::height).sum() + (layer.size() - 1) * gap <= room;
    }

    private double height(Spot spot) {
        return spot.isKnot() ? knot : box;
    }

    /** The middle of each spot, from the top. */
    Map<Spot, Double> middles(List<List<Spot>> layers) {
        Map<Spot, Double> middles = new HashMap<>();
        for (List<Spot> layer : layers) {
            for (int at = 0; at < layer.size(); at++) {
                middles.put(layer.get(at), room * (at + 0.5) / layer.size());
            }
            settle(layer, middles);
        }
        for (int round = 0; round < ROUNDS; round++) {
            for (List<Spot> layer : layers) {
                for (Spot spot : layer) {
                    middles.merge(spot, wanted(spot, middles), (now, wanted) -> (now + wanted) / 2);
                }
                settle(layer, middles);
            }
        }
        centre(middles);
        return middles;
    }

    /** As much room above all as below. */
    private void centre(Map<Spot, Double> middles) {
        double top = room;
        double bottom = 0;
        for (Map.Entry<Spot, Double> spot : middles.entrySet()) {
            top = Math.min(top, spot.getValue() - height(spot.getKey()) / 2);
            bottom = Math.max(bottom, spot.getValue() + height(spot.getKey()) / 2);
        }
        double down = (room - bottom - top) / 2;
        middles.replaceAll((spot, middle) -> middle + down);
    }

    private static double wanted(Spot spot, Map<Spot, Double> middles) {
        return Stream.concat(spot.before.stream(), spot.after.stream())
                .mapToDouble(other -> middles.getOrDefault(other, 0.0))
                .average()
                .orElse(middles.getOrDefault(spot, 0.0));
    }

    /** Keeps the order, the gaps and the page's ends. */
    private void settle(List<Spot> layer, Map<Spot, Double> middles) {
        double end = 0;
        for (Spot spot : layer) {
            double top = Math.max(end, middles.getOrDefault(spot, 0.0) - height(spot) / 2);
            middles.put(spot, top + height(spot) / 2);
            end = top + height(spot) + gap;
        }
        double limit = room;
        for (int at = layer.size() - 1; at >= 0; at--) {
            Spot spot = layer.get(at);
            double bottom = Math.min(limit, middles.getOrDefault(spot, 0.0) + height(spot) / 2);
            middles.put(spot, bottom - height(spot) / 2);
            limit = bottom - height(spot) - gap;
        }
    }
}
