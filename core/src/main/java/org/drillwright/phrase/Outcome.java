package org.drillwright.phrase;

import java.util.List;

/**
 * What comes of a move. After a fault play goes on as if the turn had done what it claims.
 *
 * @param next the state after it
 * @param refusals why it cannot be what it claims; empty if it can
 * @param asked what the rules had to know for that
 */
record Outcome(State next, List<Refusal> refusals, List<Question> asked) {

    public Outcome {
        refusals = List.copyOf(refusals);
        asked = List.copyOf(asked);
    }
}
