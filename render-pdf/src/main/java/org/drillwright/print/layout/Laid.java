package org.drillwright.print.layout;

import java.util.List;
import org.drillwright.print.frame.Frame;

/**
 * Cards, in the order of their drills, and what there is to say about them.
 *
 * @param cards one or more for each drill that could be printed whole
 */
public record Laid(List<CardSides> cards, List<CardProblem> problems) {

    public Laid {
        cards = List.copyOf(cards);
        problems = List.copyOf(problems);
    }

    /** What is printed in front. */
    public List<Frame> fronts() {
        return cards.stream().map(CardSides::front).toList();
    }

    /** All that is printed, each front before its back. */
    public List<Frame> sides() {
        return cards.stream().flatMap(card -> card.printed().stream()).toList();
    }
}
