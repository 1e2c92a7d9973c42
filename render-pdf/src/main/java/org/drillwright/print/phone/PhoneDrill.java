package org.drillwright.print.phone;

import org.drillwright.model.Drill;
import org.drillwright.print.layout.words.CardSubject;

/**
 * A drill for the page.
 *
 * @param tag of the language that its counts are written in (BCP 47)
 */
public record PhoneDrill(CardSubject card, String tag) {

    Drill drill() {
        return card.drill();
    }

    String title() {
        return drill().title().isBlank() ? drill().id() : drill().title();
    }
}
