package org.drillwright.check;

import java.util.Optional;
import org.drillwright.notation.Action;
import org.drillwright.notation.Position;

/** What one turn tells of the other side, and what that side's own turn says. */
public final class SameDeed {

    private SameDeed() {}

    /** Whether two actions may be one, the one told with more words than the other. */
    public static boolean mayBe(Action told, Action own) {
        if (told instanceof Action.Aside || told instanceof Action.Unread) {
            return true;
        }
        if (told instanceof Action.Step step && own instanceof Action.Step taken) {
            return step.equals(taken);
        }
        boolean hands = guards(told) && guards(own);
        boolean attacks = attacks(told) && attacks(own);
        Optional<Position> one = position(told);
        Optional<Position> two = position(own);
        boolean same = one.isEmpty() || two.isEmpty() || one.equals(two);
        return (hands || attacks || told.getClass().equals(own.getClass())) && same;
    }

    private static boolean attacks(Action action) {
        return action instanceof Action.Strike || action instanceof Action.Lunge;
    }

    private static boolean guards(Action action) {
        return action instanceof Action.Parry
                || action instanceof Action.Place
                || action instanceof Action.OnGuard
                || action instanceof Action.Recover
                || action instanceof Action.Answer
                || action instanceof Action.State;
    }

    private static Optional<Position> position(Action action) {
        if (action instanceof Action.Parry parry) {
            return parry.position();
        }
        if (action instanceof Action.Place place) {
            return Optional.of(place.position());
        }
        if (action instanceof Action.OnBlade blade) {
            return blade.position();
        }
        if (action instanceof Action.OnGuard guard) {
            return guard.stance().guard();
        }
        return action instanceof Action.Recover recover ? recover.stance().guard() : Optional.empty();
    }
}
