package org.drillwright.plan.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Why no perfect matching weighs less than one that was found: a number for each vertex and for some odd sets of them, those
 * of the sets not below 0, such that over no edge the numbers of all that it leaves come to more than its weight. A perfect
 * matching leaves each vertex and each odd set at least once, so it weighs no less than the sum of all numbers (Edmonds 1965).
 */
public final class Certificate {

    private final int vertices;
    private final double[] alone;
    private final List<boolean[]> sets = new ArrayList<>();
    private final List<Double> numbers = new ArrayList<>();
    private final double[] outer;
    private double sum;
    private boolean sound = true;

    /** @param given a number for each set of vertices; those that lack count 0 */
    public Certificate(int vertices, Map<Set<Integer>, Double> given) {
        this.vertices = vertices;
        this.alone = new double[vertices];
        this.outer = new double[vertices];
        given.forEach(this::take);
    }

    private void take(Set<Integer> set, double number) {
        sum += number;
        if (set.size() == 1) {
            set.forEach(vertex -> alone[vertex] += number);
        } else if (number != 0) {
            sound &= set.size() % 2 == 1 && number > 0;
            boolean[] in = new boolean[vertices];
            set.forEach(vertex -> {
                in[vertex] = true;
                outer[vertex] += number;
            });
            sets.add(in);
            numbers.add(number);
        }
    }

    /**
     * Whether it proves that a matching is one of least weight.
     *
     * @param edges three numbers for each: its ends and its weight
     * @param mates for each vertex the other end of its edge
     */
    public boolean proves(int[][] edges, int[] mates) {
        long weight = 0;
        int met = 0;
        boolean[] seen = new boolean[vertices];
        for (int[] edge : edges) {
            if (leaves(edge[0], edge[1]) > edge[2]) {
                return false;
            }
            boolean matched = mates[edge[0]] == edge[1] && mates[edge[1]] == edge[0];
            if (matched && !seen[edge[0]] && !seen[edge[1]]) {
                seen[edge[0]] = true;
                seen[edge[1]] = true;
                met += 2;
                weight += edge[2];
            }
        }
        return sound && met == vertices && sum == weight;
    }

    /** Whether an edge weighs just what the numbers ask of it, so that it may be in a matching of least weight. */
    public boolean isTight(int one, int other, int weight) {
        return leaves(one, other) == weight;
    }

    /** How many odd sets of three or more, whose number isn't 0, an edge leaves. */
    public int setsLeft(int one, int other) {
        return (int) sets.stream().filter(set -> set[one] != set[other]).count();
    }

    /** The numbers of all that an edge leaves. */
    private double leaves(int one, int other) {
        double all = alone[one] + alone[other] + outer[one] + outer[other];
        for (int set = 0; set < sets.size() && outer[one] > 0 && outer[other] > 0; set++) {
            if (sets.get(set)[one] && sets.get(set)[other]) {
                all -= 2 * numbers.get(set);
            }
        }
        return all;
    }
}
