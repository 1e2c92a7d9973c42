package org.drillwright.grammar;

import java.util.List;
import org.drillwright.lexicon.Features;

/**
 * A stretch of a sentence that the grammar knows.
 *
 * @param category what it is
 * @param from its first token
 * @param to behind its last token
 * @param weight what it costs: the more, the less likely it is meant
 * @param arguments what a head has taken so far
 * @param meant what it means
 */
public record Phrase<M>(
        String category,
        int from,
        int to,
        Features features,
        double weight,
        List<Argument<M>> arguments,
        List<M> meant) {

    public Phrase {
        arguments = List.copyOf(arguments);
        meant = List.copyOf(meant);
    }

    boolean saysTheSame(Phrase<M> other) {
        return features.equals(other.features) && meant.equals(other.meant) && arguments.equals(other.arguments);
    }
}
