package org.drillwright.phrase;

import org.drillwright.wording.Message;

/**
 * Something that a rule asked of the state.
 *
 * @param part what was asked: line, distance, mask, guard, contact …
 * @param known whether it was known
 * @param since where it became unknown, in words
 */
public record Question(String part, boolean known, Message since) {

    /** What was asked, in words: {@code the line}. */
    public Message words() {
        return Message.of(Question.class, "asked." + part.replace(' ', '-'));
    }
}
