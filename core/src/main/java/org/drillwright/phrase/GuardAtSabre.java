package org.drillwright.phrase;

import java.util.Optional;
import org.drillwright.notation.Action;
import org.drillwright.notation.Action.ParryKind;
import org.drillwright.notation.Move;
import org.drillwright.notation.Position;
import org.drillwright.wording.Message;

/**
 * The sabre guard of tierce covers the flank (Waite 1880, p. 41), and yet the cut to the flank at who stands in it, parried in
 * tierce, is the first exercise there is (common practice, no source). Who still has to parry has not been covered before.
 */
final class GuardAtSabre {

    private final Setting setting;

    GuardAtSabre(Setting setting) {
        this.setting = setting;
    }

    /**
     * The state in which a cut is made that is parried in the very guard.
     *
     * @param where the count in words
     */
    State opened(State state, Move answer, Message where) {
        Fencer fencer = state.of(answer.by());
        boolean inGuard = setting.isSabre()
                && answer.action() instanceof Action.Parry parry
                && parry.kind() != ParryKind.CIRCULAR
                && parry.position().equals(Optional.of(Position.TIERCE))
                && fencer.hand().is(Position.TIERCE);
        return inGuard ? state.with(answer.by(), fencer.open(where).withReach()) : state;
    }
}
