package org.drillwright.print.layout;

import java.util.List;
import org.drillwright.print.frame.Frame;

/**
 * Cards, in the order of their drills, and what there is to say about them.
 *
 * @param cards one or more for each drill that could be printed whole
 */
public record Laid(List<Frame> cards, List<Problem> problems) {

    public Laid {
        cards = List.copyOf(cards);
        problems = List.copyOf(problems);
    }
}
