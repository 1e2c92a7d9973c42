package org.drillwright.plan.kept;

import java.util.Optional;

/**
 * Somebody of a plan was gone for some of its rounds.
 *
 * @param from the first of these rounds, from 1
 * @param until the first round in which they stood in their place again; {@link #NEVER} if they didn't come back
 * @param instead who took their place
 * @param teaches whether who did helps to teach, and so is nobody's partner but a helper
 */
public record Absence(String person, int from, int until, Optional<String> instead, boolean teaches) {

    /** After all rounds. */
    public static final int NEVER = Integer.MAX_VALUE;

    boolean holds(int round) {
        return from <= round && round < until;
    }

    /** Who took the place and trains; somebody who teaches isn't counted among those who were there. */
    Optional<String> standIn() {
        return instead.filter(name -> !teaches);
    }
}
