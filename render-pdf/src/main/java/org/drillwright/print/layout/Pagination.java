package org.drillwright.print.layout;

import java.util.ArrayList;
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
record Pagination(double alone, double first, double middle, double last) {

    /** For each card the number of its counts, or nothing if one part fits no card. */
    Optional<List<Integer>> share(List<Double> heights) {
        if (sum(heights, 0, heights.size()) <= alone) {
            return Optional.of(List.of(heights.size()));
        }
        for (int cards = 2; cards <= heights.size() + 2; cards++) {
            Optional<List<Integer>> shares = on(cards, heights);
            if (shares.isPresent()) {
                return shares;
            }
        }
        return Optional.empty();
    }

    /** The least uneven way for so many cards, by the sum of squares of what is left blank. */
    private Optional<List<Integer>> on(int cards, List<Double> heights) {
        int counts = heights.size();
        double[][] cost = new double[cards + 1][counts + 1];
        int[][] from = new int[cards + 1][counts + 1];
        for (double[] row : cost) {
            java.util.Arrays.fill(row, Double.POSITIVE_INFINITY);
        }
        cost[0][0] = 0;
        for (int card = 1; card <= cards; card++) {
            for (int end = 0; end <= counts; end++) {
                for (int start = end; start >= 0; start--) {
                    double blank = room(card, cards) - sum(heights, start, end);
                    if (blank < 0) {
                        break;
                    }
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

    private static double sum(List<Double> heights, int start, int end) {
        double sum = 0;
        for (double height : heights.subList(start, end)) {
            sum += height;
        }
        return sum;
    }
}
