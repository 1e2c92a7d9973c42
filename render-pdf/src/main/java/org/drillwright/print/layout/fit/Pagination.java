package org.drillwright.print.layout.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * How many counts go on each card: on as few cards as hold them, and those filled as evenly as can be.
 *
 * @param alone what one card holds that is both first and last, in points
 * @param first what the first of several holds
 * @param middle what one between holds
 * @param last what the last holds
 */
public record Pagination(double alone, double first, double middle, double last) {

    /** For each card the number of its counts, or nothing if one part fits no card. */
    public Optional<List<Integer>> share(List<Double> heights) {
        double[] to = sums(heights);
        double total = to[heights.size()];
        if (total <= alone) {
            return Optional.of(List.of(heights.size()));
        }
        int least = (int) Math.max(2, Math.floor(total / Math.max(middle, Math.max(first, last))));
        for (int cards = least; cards <= heights.size() + 2; cards++) {
            Optional<List<Integer>> shares = on(cards, to);
            if (shares.isPresent()) {
                return shares;
            }
        }
        return Optional.empty();
    }

    /** The least uneven way for so many cards, by the sum of squares of what is left blank. */
    private Optional<List<Integer>> on(int cards, double[] to) {
        int counts = to.length - 1;
        double[][] cost = new double[cards + 1][counts + 1];
        int[][] from = new int[cards + 1][counts + 1];
        for (double[] row : cost) {
            Arrays.fill(row, Double.POSITIVE_INFINITY);
        }
        cost[0][0] = 0;
        for (int card = 1; card <= cards; card++) {
            for (int end = 0; end <= counts; end++) {
                for (int start = end; start >= 0 && to[end] - to[start] <= room(card, cards); start--) {
                    double blank = room(card, cards) - (to[end] - to[start]);
                    double total = cost[card - 1][start] + blank * blank;
                    if (total < cost[card][end]) {
                        cost[card][end] = total;
                        from[card][end] = start;
                    }
                }
            }
        }
        return Double.isInfinite(cost[cards][counts]) ? Optional.empty() : Optional.of(shares(from, cards, counts));
    }

    private static List<Integer> shares(int[][] from, int cards, int counts) {
        List<Integer> shares = new ArrayList<>();
        int end = counts;
        for (int card = cards; card > 0; card--) {
            shares.add(0, end - from[card][end]);
            end = from[card][end];
        }
        return shares;
    }

    private double room(int card, int cards) {
        if (card == 1) {
            return first;
        }
        return card == cards ? last : middle;
    }

    /** For each count the height of all before it. */
    private static double[] sums(List<Double> heights) {
        double[] to = new double[heights.size() + 1];
        for (int at = 0; at < heights.size(); at++) {
            to[at + 1] = to[at] + heights.get(at);
        }
        return to;
    }
}
