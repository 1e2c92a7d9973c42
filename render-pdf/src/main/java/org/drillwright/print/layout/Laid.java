package org.drillwright.print.layout;

import java.util.List;
import org.drillwright.print.frame.Frame;

/**
 * Cards, in the order of their drills, and what there is to say about them.
 *
 * @param cards the fronts, one or more for each drill that could be printed whole
 * @param backs for each front what is printed behind it; empty if backs stay blank
 */
public record Laid(List<Frame> cards, List<Frame> backs, List<Problem> problems) {

    public Laid {
        cards = List.copyOf(cards);
        backs = List.copyOf(backs);
        if (!backs.isEmpty() && backs.size() != cards.size()) {
            throw new IllegalArgumentException(backs.size() + " backs for " + cards.size() + " cards");
        }
        problems = List.copyOf(problems);
    }

    /** Cards whose backs stay blank. */
    public Laid(List<Frame> cards, List<Problem> problems) {
        this(cards, List.of(), problems);
    }
}
