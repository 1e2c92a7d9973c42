package org.drillwright.print.pdf;

import java.util.List;

/**
 * What the pages of a document hold, in the order of reading.
 *
 * @param chapters that the cards stand in; cards beyond the last stand by themselves
 * @param bothSides whether every second page is the back of the one before it
 */
public record Contents(List<Chapter> chapters, boolean bothSides) {

    /** Cards in no chapters, printed on one side. */
    public static final Contents PLAIN = new Contents(List.of(), false);

    public Contents {
        chapters = List.copyOf(chapters);
    }
}
