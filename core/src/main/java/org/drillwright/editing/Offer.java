package org.drillwright.editing;

import org.drillwright.autofix.Edit;
import org.drillwright.wording.Message;

/**
 * Something that may be written where somebody writes.
 *
 * @param label as it is shown
 * @param detail a few words beside it; may be empty
 * @param told one or two sentences on it; may be empty
 * @param edit what writing it does
 */
public record Offer(Kind kind, String label, Message detail, Message told, Edit edit) {

    /** What it is. */
    public enum Kind {
        KEY,
        WORD,
        DRILL,
        TURN
    }
}
