package org.drillwright.meaning;

import org.drillwright.notation.Action;
import org.drillwright.notation.Aim;

/** What a clause says is done: an action, or what completes the one before it. */
public sealed interface Meant {

    record Does(Action action) implements Meant {}

    /**
     * A stroke's end told apart from its beginning: 'slide under <em>and hit low</em>'.
     *
     * @param strikes whether it is a stroke by itself where there is none to complete
     */
    record Lands(Aim aim, boolean strikes) implements Meant {}
}
