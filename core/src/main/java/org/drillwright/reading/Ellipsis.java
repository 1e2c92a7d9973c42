package org.drillwright.reading;

import java.util.Optional;
import org.drillwright.meaning.Meant;
import org.drillwright.notation.Action;
import org.drillwright.notation.Action.ParryKind;
import org.drillwright.notation.Action.Role;

/** The same once more, elsewhere, of which only the place is told: 'parry quarte, then sixte'. */
final class Ellipsis {

    private Ellipsis() {}

    /** 'Thrust outside high, to the shoulder': first the line, then the target in it. */
    static Optional<Action> targeted(Action action, Meant.Again again) {
        return action instanceof Action.Strike strike
                        && again.position().isEmpty()
                        && !strike.feint()
                        && strike.aim().height().isPresent()
                        && strike.aim().width().isPresent()
                        && strike.aim().target().isEmpty()
                        && again.aim().target().isPresent()
                        && strike.aim().agreesWith(again.aim())
                ? Optional.of(strike.aimed(again.aim().completedBy(strike.aim())))
                : Optional.empty();
    }

    static Optional<Action> elsewhere(Action action, Meant.Again again) {
        if (again.position().isPresent()) {
            if (action instanceof Action.Parry parry) {
                ParryKind kind = parry.position().isEmpty() ? parry.kind() : ParryKind.UNSTATED;
                return Optional.of(new Action.Parry(again.position(), kind, again.aim(), parry.inTheLunge()));
            }
            return action instanceof Action.OnBlade blade && !blade.aim().isStated()
                    ? Optional.of(new Action.OnBlade(blade.contact(), again.position(), blade.aim()))
                    : Optional.<Action>empty();
        }
        if (action instanceof Action.Strike strike && (strike.aim().isStated() || isUnaimedExtension(strike))) {
            return Optional.of(strike.at(again.aim()));
        }
        return action instanceof Action.Lunge lunge && lunge.aim().isStated()
                ? Optional.of(new Action.Lunge(lunge.depth(), again.aim()))
                : Optional.<Action>empty();
    }

    /** Whether nothing was told of where that action is, so that a place behind it is its own. */
    static boolean isPlaceless(Action action) {
        return (action instanceof Action.Parry parry && parry.position().isEmpty())
                || (action instanceof Action.OnBlade blade && blade.position().isEmpty())
                || isUnaimedExtension(action);
    }

    /** 'Straighten the arm and put the point in line, towards the chest': where it points is told behind it. */
    private static boolean isUnaimedExtension(Action action) {
        return action instanceof Action.Strike strike
                && strike.role() == Role.EXTENSION
                && !strike.aim().isStated();
    }
}
