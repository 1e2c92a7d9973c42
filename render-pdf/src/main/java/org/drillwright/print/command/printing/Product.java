package org.drillwright.print.command.printing;

import java.util.List;
import org.drillwright.wording.Message;

/** What comes of laid cards: documents or pictures. Nothing is in its place before all of it is whole. */
public interface Product {

    /** Takes the cards of one drill after another. */
    void take(List<LaidCard> cards);

    /** Puts all into place. */
    void place();

    /** Leaves nothing behind. */
    void discard();

    /** What was made, for who printed it: {@code cards.pdf: 16 cards of size a6, …}. */
    Message said();
}
