package org.drillwright.phrase;

import java.util.List;
import org.drillwright.notation.Move;

/**
 * A move as it was played.
 *
 * @param asked what the rules had to know for it
 */
public record Played(Move move, State before, State after, List<Refusal> refusals, List<Question> asked) {

    public Played {
        refusals = List.copyOf(refusals);
        asked = List.copyOf(asked);
    }

    /** The same, with these refusals. */
    Played refused(List<Refusal> others) {
        return refused(others, asked);
    }

    /** The same, with these refusals, and with what had to be known for them. */
    Played refused(List<Refusal> others, List<Question> questions) {
        return new Played(move, before, after, others, questions);
    }
}
