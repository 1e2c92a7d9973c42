package org.drillwright.check;

import java.util.Optional;
import java.util.function.Predicate;
import org.drillwright.model.Side;
import org.drillwright.phrase.Attempt;
import org.drillwright.phrase.Move;
import org.drillwright.phrase.Refusal;
import org.drillwright.phrase.State;
import org.drillwright.source.Span;

/**
 * A refusal in its place.
 *
 * @param by whose move was refused, or who left an attack unmet
 * @param where the count in words: {@code count 2}, {@code the opening}
 * @param before the state in which it was refused
 * @param move what was refused; empty if it is that nothing was done
 * @param attempt plays what might be done instead
 * @param span the words in the file
 */
public record Fault(
        Refusal refusal, Side by, String where, State before, Optional<Move> move, Attempt attempt, Span span) {

    /** Whether the move would not be refused if it were changed so; false if no one move was refused. */
    public boolean wouldPlay(Predicate<Move> changed) {
        return move.filter(changed).isPresent();
    }
}
