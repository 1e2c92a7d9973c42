package org.drillwright.editing;

import java.util.List;
import org.drillwright.source.Span;
import org.drillwright.wording.Message;

/**
 * What an author is told at a place.
 *
 * @param span the words that it is about
 * @param heading one sentence or a name
 * @param lines what is told below it
 */
public record HoverText(Span span, Message heading, List<Message> lines) {

    public HoverText {
        lines = List.copyOf(lines);
    }
}
