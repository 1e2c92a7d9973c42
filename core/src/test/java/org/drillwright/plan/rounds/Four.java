package org.drillwright.plan.rounds;

import java.util.BitSet;
import java.util.Collections;
import java.util.stream.Stream;

/**
 * Four people can be paired in just three ways. A test gives each way a part; which way has which part is turned through
 * all orders, so that no answer rests on which of two equals is seen first.
 */
final class Four {

    private static final int[][][] WAYS = {{{0, 1}, {2, 3}}, {{0, 2}, {1, 3}}, {{0, 3}, {1, 2}}};

    private final int[] order;
    private final Problem problem;

    Four(String order, int rounds) {
        this.order = order.chars().map(part -> part - '0').toArray();
        this.problem = new Problem(4, 0, Collections.nCopies(rounds, new BitSet()));
    }

    /** The orders of the three ways. */
    static Stream<String> orders() {
        return Stream.of("012", "021", "102", "120", "201", "210");
    }

    /** What the two pairs of one part cost. */
    Four cost(int part, Objective aim, int one, int other) {
        int[][] pairs = WAYS[order[part]];
        problem.cost(aim, pairs[0][0], pairs[0][1], one);
        problem.cost(aim, pairs[1][0], pairs[1][1], other);
        return this;
    }

    /** How often the two pairs of one part met before. */
    Four met(int part, int times) {
        for (int[] pair : WAYS[order[part]]) {
            problem.met(pair[0], pair[1], times);
        }
        return this;
    }

    Problem problem() {
        return problem;
    }

    /** One of the first pair of a part. */
    int one(int part) {
        return WAYS[order[part]][0][0];
    }

    /** The other of the first pair of a part. */
    int other(int part) {
        return WAYS[order[part]][0][1];
    }

    /** The row of a table in which all work as in a part. */
    int[] row(int part) {
        int[] row = new int[4];
        for (int[] pair : WAYS[order[part]]) {
            row[pair[0]] = pair[1];
            row[pair[1]] = pair[0];
        }
        return row;
    }
}
