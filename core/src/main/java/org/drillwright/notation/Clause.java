package org.drillwright.notation;

import java.util.Optional;
import java.util.Set;
import org.drillwright.model.Side;
import org.drillwright.source.Span;

/**
 * One action of a text, with the words it was read from.
 *
 * @param subject who does it, if the text names one side
 * @param span the words, within the text
 * @param join how it hangs on the clause before it
 * @param doubts what unread words beside it leave open; empty if it was read without a doubt
 */
public record Clause(Action action, Optional<Side> subject, Span span, Join join, Set<Doubt> doubts) {

    public Clause {
        doubts = Set.copyOf(doubts);
    }

    /** A clause that was read without a doubt. */
    public Clause(Action action, Optional<Side> subject, Span span, Join join) {
        this(action, subject, span, join, Set.of());
    }

    /** Whether nothing beside it was left unread. */
    public boolean isCertain() {
        return doubts.isEmpty();
    }

    /** Another action in place of this one, with the same words and the same doubts. */
    public Clause with(Action other) {
        return new Clause(other, subject, span, join, doubts);
    }

    /** How a clause hangs on the one before it. */
    public enum Join {
        /** It begins the text or a sentence. */
        BEGINS,
        /** It follows on 'and' or 'then'. */
        AND,
        /** It follows on 'with' or 'by', or directly. */
        WITH,
        /** It follows on a comma. */
        COMMA
    }
}
