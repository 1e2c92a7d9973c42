package org.drillwright.notation;

import java.util.Optional;
import org.drillwright.model.Side;
import org.drillwright.source.Span;

/**
 * One action of a text, with the words it was read from.
 *
 * @param subject who does it, if the text names one side
 * @param span the words, within the text
 * @param join how it hangs on the clause before it
 */
public record Clause(Action action, Optional<Side> subject, Span span, Join join) {

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
