package org.drillwright.phrase;

import java.util.List;
import org.drillwright.model.Side;
import org.drillwright.notation.Clause;
import org.drillwright.source.Span;

/**
 * Where something was refused.
 *
 * @param part the count, numbered from 0; -1 for the opening, and as many as there are counts for the closing
 * @param by whose turn it stands in
 * @param words of what was refused, within the turn; none if it is that nothing was done
 */
public record Spot(int part, Side by, List<Span> words) {

    public Spot {
        words = List.copyOf(words);
    }

    boolean holds(Clause clause) {
        return words.contains(clause.span());
    }
}
