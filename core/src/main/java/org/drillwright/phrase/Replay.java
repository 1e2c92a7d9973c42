package org.drillwright.phrase;

import java.util.List;

/**
 * A whole drill as it was played: once, for all rules to look at.
 *
 * @param setting what stays the same through it
 * @param opening what the opening leads to, move by move
 * @param opened the state that the opening leads to
 * @param start the state in which the first count begins, as {@code start} states it
 * @param counts the counts
 * @param closing what the closing does, move by move
 */
public record Replay(
        Setting setting, List<Played> opening, State opened, State start, List<Count> counts, List<Played> closing) {

    public Replay {
        opening = List.copyOf(opening);
        counts = List.copyOf(counts);
        closing = List.copyOf(closing);
    }

    /** How many things the phrase refuses in it. */
    public int refusals() {
        int refusals = refusals(opening) + refusals(closing);
        for (Count count : counts) {
            refusals += refusals(count.moves()) + count.unmet().size();
        }
        return refusals;
    }

    private static int refusals(List<Played> moves) {
        int refusals = 0;
        for (Played played : moves) {
            refusals += played.refusals().size();
        }
        return refusals;
    }

    /** The state in which the last count ends. */
    public State end() {
        return counts.isEmpty() ? start : counts.get(counts.size() - 1).end();
    }

    /** The state in which the closing ends. */
    public State closed() {
        return closing.isEmpty() ? end() : closing.get(closing.size() - 1).after();
    }
}
