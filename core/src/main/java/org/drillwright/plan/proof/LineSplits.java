package org.drillwright.plan.proof;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalLong;
import java.util.function.BiPredicate;
import java.util.function.IntBinaryOperator;

/**
 * All ways in which people can form two lines of the same length so that everybody may meet everybody opposite, counted one
 * by one: where one line walks past the whole of the other, what the meetings cost hangs on who stands in which line, and
 * on nothing else.
 */
public final class LineSplits {

    /** Ways; if there are more, nothing is said. */
    public static final long MOST = 200_000;

    private final List<List<Integer>> bound;
    private final long[][] between;
    private final boolean[] first;
    private final int length;
    private long seen;
    private long least = Long.MAX_VALUE;

    /**
     * @param people their number, even; they are counted from 0
     * @param together whether two may meet in whichever round
     * @param cost of a meeting of two
     */
    public LineSplits(int people, BiPredicate<Integer, Integer> together, IntBinaryOperator cost) {
        this.length = people / 2;
        this.bound = bound(people, together);
        this.first = new boolean[bound.size()];
        this.between = new long[bound.size()][bound.size()];
        for (int one = 0; one < bound.size(); one++) {
            for (int other = 0; other < bound.size(); other++) {
                for (int person : bound.get(one)) {
                    for (int mate : bound.get(other)) {
                        between[one][other] += one == other ? 0 : cost.applyAsInt(person, mate);
                    }
                }
            }
        }
    }

    /** People who must stand in one line, as some two of them may not meet; the largest such groups first. */
    private static List<List<Integer>> bound(int people, BiPredicate<Integer, Integer> together) {
        List<List<Integer>> bound = new ArrayList<>();
        boolean[] taken = new boolean[people];
        for (int person = 0; person < people; person++) {
            if (!taken[person]) {
                List<Integer> group = new ArrayList<>(List.of(person));
                taken[person] = true;
                for (int at = 0; at < group.size(); at++) {
                    for (int other = 0; other < people; other++) {
                        if (!taken[other] && !together.test(group.get(at), other)) {
                            taken[other] = true;
                            group.add(other);
                        }
                    }
                }
                bound.add(group);
            }
        }
        bound.sort(Comparator.comparingInt(group -> -group.size()));
        return bound;
    }

    /**
     * What all meetings across the lines cost at least; empty if there are too many ways, or none.
     *
     * @throws IllegalStateException if not as many ways were seen as there are, which is a fault of the program
     */
    public OptionalLong least() {
        long ways = ways();
        if (ways == 0 || ways > MOST) {
            return OptionalLong.empty();
        }
        first[0] = true;
        fill(1, bound.get(0).size(), 0, 0);
        if (seen != ways) {
            throw new IllegalStateException(seen + " of " + ways + " ways to form two lines were seen");
        }
        return OptionalLong.of(least);
    }

    /** How many there are, counted without making one; which of the two lines is which is of no account. */
    private long ways() {
        if (bound.isEmpty()) {
            return 0;
        }
        long[] ways = new long[length + 1];
        ways[0] = 1;
        for (List<Integer> group : bound.subList(1, bound.size())) {
            for (int size = length; size >= group.size(); size--) {
                ways[size] = Math.min(Long.MAX_VALUE / 2, ways[size] + ways[size - group.size()]);
            }
        }
        int begun = bound.get(0).size();
        return begun > length ? 0 : ways[length - begun];
    }

    /** Puts group after group into either line as long as there is room. */
    private void fill(int next, int here, int opposite, long cost) {
        if (next == bound.size()) {
            seen++;
            least = Math.min(least, cost);
            return;
        }
        int size = bound.get(next).size();
        long across = 0;
        long along = 0;
        for (int before = 0; before < next; before++) {
            if (first[before]) {
                across += between[before][next];
            } else {
                along += between[before][next];
            }
        }
        if (here + size <= length) {
            first[next] = true;
            fill(next + 1, here + size, opposite, cost + along);
        }
        if (opposite + size <= length) {
            first[next] = false;
            fill(next + 1, here, opposite + size, cost + across);
        }
    }
}
