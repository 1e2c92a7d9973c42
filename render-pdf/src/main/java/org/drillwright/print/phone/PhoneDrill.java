package org.drillwright.print.phone;

import java.util.Locale;
import org.drillwright.model.Drill;
import org.drillwright.print.layout.words.CardSubject;
import org.drillwright.print.layout.words.TextPlace;

/**
 * A drill for the page.
 *
 * @param tag of the language that its counts are written in (BCP 47)
 */
public record PhoneDrill(CardSubject card, String tag) {

    /** The tag of the language of a text at a place of the drill. */
    String tag(TextPlace place) {
        Locale apart = card.words().apart().get(place);
        return apart == null ? tag : apart.toLanguageTag();
    }

    String titleTag() {
        return tag(TextPlace.of("title"));
    }

    Drill drill() {
        return card.drill();
    }

    String title() {
        return drill().title().isBlank() ? drill().id() : drill().title();
    }
}
