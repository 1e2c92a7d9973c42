package org.drillwright.phrase;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.wording.Message;

/** What is refused and what is asked while one move is played. */
final class Objections {

    private final List<Refusal> refusals = new ArrayList<>();
    private final List<Question> asked = new ArrayList<>();

    void refuse(Refusal refusal) {
        refusals.add(refusal);
    }

    /** Notes that a rule needs to know something; answers whether it is known. */
    boolean asks(String part, boolean known, Message since) {
        asked.add(new Question(part, known, known ? Message.none() : since));
        return known;
    }

    /** What comes of a move that is in doubt: nothing is held against it. */
    Outcome unrefused(State next) {
        return new Outcome(next, List.of(), asked);
    }

    Outcome outcome(State next) {
        return new Outcome(next, refusals, asked);
    }
}
