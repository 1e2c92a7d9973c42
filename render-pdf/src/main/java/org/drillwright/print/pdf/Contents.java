package org.drillwright.print.pdf;

import java.util.ArrayList;
import java.util.List;

/**
 * What the pages of a document hold, in the order of reading.
 *
 * @param chapters that the cards stand in; cards beyond the last stand by themselves
 * @param bothSides whether every second page is the back of the one before it
 * @param order for each card, as pages show them, its place in the order of reading; empty if pages are read as they lie
 */
public record Contents(List<Chapter> chapters, boolean bothSides, List<Integer> order) {

    /** Cards in no chapters, printed on one side. */
    public static final Contents PLAIN = new Contents(List.of(), false);

    public Contents {
        chapters = List.copyOf(chapters);
        order = List.copyOf(order);
    }

    public Contents(List<Chapter> chapters, boolean bothSides) {
        this(chapters, bothSides, List.of());
    }

    /** What was gathered card by card, in the order of reading. */
    <T> List<T> read(List<T> cards) {
        if (order.isEmpty()) {
            return cards;
        }
        List<T> read = new ArrayList<>(cards);
        for (int at = 0; at < cards.size(); at++) {
            read.set(order.get(at), cards.get(at));
        }
        return read;
    }
}
