package org.drillwright.print.layout.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleSupplier;
import java.util.function.IntToDoubleFunction;

/**
 * How the counts of a drill are shared out on sides of cards: as many on each as it holds, the closing with the last.
 * Heights are points.
 *
 * @param room what the side of a number, from 0, has for counts and what follows them
 * @param closing the height of what stands behind the last count
 * @param over the height of the line that sends the reader to the next side; asked for only if there is one
 */
public record Sides(IntToDoubleFunction room, double closing, DoubleSupplier over) {

    /** For each side the number of its counts; nothing if one part fits no side. */
    public Optional<List<Integer>> share(List<Double> heights) {
        List<Integer> shares = new ArrayList<>();
        int at = 0;
        while (true) {
            double left = room.applyAsDouble(shares.size());
            if (sum(heights, at, heights.size()) + closing <= left) {
                shares.add(heights.size() - at);
                return Optional.of(shares);
            }
            int taken = taken(heights, at, left);
            // Only what stands before the first count may take a whole side for itself.
            if (taken == 0 && !shares.isEmpty()) {
                return Optional.empty();
            }
            shares.add(taken);
            at += taken;
        }
    }

    /** How many fit; the last stays for the closing's side, unless the two together fill more than a side. */
    private int taken(List<Double> heights, int from, double left) {
        int taken = 0;
        int most = from == heights.size() - 1 ? 1 : heights.size() - 1 - from;
        while (taken < most && sum(heights, from, from + taken + 1) + over.getAsDouble() <= left) {
            taken++;
        }
        return taken;
    }

    private static double sum(List<Double> heights, int from, int to) {
        return heights.subList(from, to).stream()
                .mapToDouble(Double::doubleValue)
                .sum();
    }
}
