package org.drillwright.phrase;

import java.util.Optional;
import org.drillwright.model.Side;
import org.drillwright.notation.Action;
import org.drillwright.notation.Position;

/**
 * A parry that was made and not yet answered: the right to riposte.
 *
 * @param by who parried
 * @param position where the hand ended, or went with the blade since, if it is known
 * @param against what was parried
 * @param feint whether only a feint was parried
 * @param circular whether the hand went round
 */
public record Parried(Side by, Optional<Position> position, Action.Role against, boolean feint, boolean circular) {

    /** The same parry, the hand in another position since. */
    Parried at(Position now) {
        return new Parried(by, Optional.of(now), against, feint, circular);
    }
}
