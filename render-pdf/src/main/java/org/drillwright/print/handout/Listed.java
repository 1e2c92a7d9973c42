package org.drillwright.print.handout;

import java.util.List;
import org.drillwright.mark.PrintMark;
import org.drillwright.model.Drill;
import org.drillwright.print.layout.words.CardSubject.Place;

/**
 * A drill in a table of contents.
 *
 * @param mark what stands at the foot of its cards
 * @param cards how many it has
 * @param needs where the drills stand that it needs
 */
public record Listed(Drill drill, PrintMark mark, int cards, List<Place> needs) {

    public Listed {
        needs = List.copyOf(needs);
    }

    String title() {
        return drill.title().isBlank() ? drill.id() : drill.title();
    }
}
