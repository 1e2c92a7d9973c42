package org.drillwright.print.layout;

import org.drillwright.wording.Message;

/**
 * Something about a card that its printer should know.
 *
 * @param drill the drill's id
 * @param field the field of the drill or of its card that it is about, such as {@code step 3, leader}; empty if all
 * @param sentence what it is and what to do
 */
public record CardProblem(Kind kind, String drill, String field, Message sentence) {

    /** What follows from it. */
    public enum Kind {
        /** The drill has no card: what could not be printed whole is not printed at all. */
        NOT_PRINTED,
        /** The card is whole, but it could be better. */
        PRINTED
    }
}
