package org.drillwright.plan.match;

/**
 * Two vertices that may be matched.
 *
 * @param weight from 0 to {@link LexicalWeights#LARGEST}
 */
public record Edge(int one, int other, int weight) {

    public Edge {
        if (weight < 0 || weight > LexicalWeights.LARGEST) {
            throw new IllegalArgumentException("a weight of " + weight);
        }
    }
}
