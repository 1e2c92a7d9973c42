package org.drillwright.check;

import org.drillwright.model.Side;
import org.drillwright.phrase.Attempt;
import org.drillwright.phrase.Refusal;
import org.drillwright.phrase.State;
import org.drillwright.source.Span;
import org.drillwright.wording.Message;

/**
 * A refusal in its place.
 *
 * @param by whose move was refused, or who left an attack unmet
 * @param where the count in words: {@code count 2}, {@code the opening}
 * @param before the state in which it was refused
 * @param attempt plays the drill with something else done here
 * @param inDoubt whether words of the count, of either turn, were not read
 * @param span the words in the file
 */
public record Fault(
        Refusal refusal, Side by, Message where, State before, Attempt attempt, boolean inDoubt, Span span) {

    /** For what a rule would name instead. */
    public WaysOut ways() {
        return new WaysOut(this);
    }
}
