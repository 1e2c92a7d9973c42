package org.drillwright.grammar;

import java.util.List;
import org.drillwright.lexicon.Features;

/**
 * What stands with a head.
 *
 * @param relation how it hangs on the head: {@code obj}, {@code adv}, {@code subj}, or a preposition's relation
 * @param sort the category of what stands there
 * @param features what it says
 * @param meant what it means by itself, if it is an action
 */
public record Argument<M>(String relation, String sort, Features features, List<M> meant) {

    public Argument {
        meant = List.copyOf(meant);
    }
}
