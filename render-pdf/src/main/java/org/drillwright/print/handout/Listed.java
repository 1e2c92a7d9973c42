package org.drillwright.print.handout;

import org.drillwright.mark.PrintMark;
import org.drillwright.model.Drill;

/**
 * A drill in a table of contents.
 *
 * @param mark what stands at the foot of its cards
 * @param cards how many it has
 * @param page on which the first of them is, from 1
 */
public record Listed(Drill drill, PrintMark mark, int cards, int page) {

    /** The same on another page. */
    Listed on(int other) {
        return new Listed(drill, mark, cards, other);
    }

    String title() {
        return drill.title().isBlank() ? drill.id() : drill.title();
    }
}
