package org.drillwright.phrase;

import java.util.OptionalInt;
import org.drillwright.model.Side;
import org.drillwright.notation.Action;
import org.drillwright.notation.Clause;

/** How far a side's feet have gone in a drill, in half steps; above 0 forward. */
public final class GroundCovered {

    private final Side side;
    private int gone;
    private boolean lunged;
    private boolean known = true;

    private GroundCovered(Side side) {
        this.side = side;
    }

    /** The half steps from where the first count begins to where the last one ends; empty if they cannot be counted. */
    public static OptionalInt gained(Replay replay, Side side) {
        GroundCovered ground = new GroundCovered(side);
        replay.counts().forEach(ground::add);
        return ground.known && !ground.lunged ? OptionalInt.of(ground.gone) : OptionalInt.empty();
    }

    private void add(Count count) {
        for (Played played : count.moves()) {
            if (played.move().by() == side) {
                known = known && played.move().isCertain();
                played.move().parts().stream().map(Clause::action).forEach(this::add);
            }
        }
    }

    private void add(Action action) {
        if (action instanceof Action.Step step) {
            gone += step.times() * step.foot().halfSteps();
            known = known && step.foot() != Action.Foot.GAIN;
        } else if (action instanceof Action.Lunge lunge) {
            lunged = true;
            known = known && lunge.depth() == Action.Depth.FULL;
        } else if (action instanceof Action.Recover recover) {
            // A lunge takes the front foot forward; coming up to it, the rear foot follows.
            gone += lunged && recover.way() == Action.Way.FORWARD ? Action.Foot.ADVANCE.halfSteps() : 0;
            lunged = false;
        } else if (action instanceof Action.OnGuard) {
            lunged = false;
        } else if (action instanceof Action.Withdraw
                || action instanceof Action.Stand
                || action instanceof Action.Unread
                || action instanceof Action.Aside) {
            known = known && action instanceof Action.Aside;
        }
    }
}
