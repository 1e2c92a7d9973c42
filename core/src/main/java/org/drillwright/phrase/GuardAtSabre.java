package org.drillwright.phrase;

import org.drillwright.notation.Action;
import org.drillwright.notation.Action.ParryKind;
import org.drillwright.notation.Position;

/**
 * At sabre a guard does not close its line as a parry does: the cut to the flank at who stands in tierce, parried in tierce,
 * is the first exercise there is (common practice, no source). Who parries where he stands has not been covered before.
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
    State opened(State state, Move answer, String where) {
        Fencer fencer = state.of(answer.by());
        boolean inGuard = setting.isSabre()
                && answer.action() instanceof Action.Parry parry
                && parry.kind() != ParryKind.CIRCULAR
                && parry.position().filter(position -> stands(fencer, position)).isPresent();
        return inGuard ? state.with(answer.by(), fencer.open(where).withReach()) : state;
    }

    private static boolean stands(Fencer fencer, Position position) {
        return fencer.hand().is(position);
    }
}
