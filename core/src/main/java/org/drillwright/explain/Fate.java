package org.drillwright.explain;

import java.util.List;
import java.util.Optional;
import org.drillwright.model.Side;
import org.drillwright.notation.Action;
import org.drillwright.phrase.Attack;
import org.drillwright.phrase.Count;
import org.drillwright.phrase.Played;
import org.drillwright.phrase.Refusal;

/** What became of an attack within its count. */
public enum Fate {
    PARRIED("parried"),
    EVADED("evaded"),
    RECEIVED("received"),
    SHORT("short of the target"),
    THREAT("a threat, no answer owed"),
    NOT_MET("not met"),
    NOT_YET("still under way"),
    UNKNOWN("not known");

    private final String words;

    Fate(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    /** The fate of the attack that a move of a count launched; empty if the move launched none. */
    public static Optional<Fate> of(Count count, int move) {
        Played launched = count.moves().get(move);
        Side target = launched.move().by().other();
        Optional<Attack> attack = launched.after().attackOn(target);
        if (attack.isEmpty() || attack.equals(launched.before().attackOn(target))) {
            return Optional.empty();
        }
        if (launched.refusals().stream().anyMatch(Refusal.OutOfReach.class::isInstance)) {
            return Optional.of(SHORT);
        }
        return Optional.of(fate(count.moves().subList(move + 1, count.moves().size()), target, attack.get(), count));
    }

    /** The fate within a count of the attack at one side that was under way when it began; empty if there was none. */
    public static Optional<Fate> ofPending(Count count, Side target) {
        return count.begin().attackOn(target).map(attack -> fate(count.moves(), target, attack, count));
    }

    private static Fate fate(List<Played> later, Side target, Attack attack, Count count) {
        for (Played played : later) {
            boolean gone = played.before().attackOn(target).isPresent()
                    && played.after().attackOn(target).isEmpty();
            if (gone && played.move().by() == target) {
                return played.move().isCertain() ? answered(played.move().action()) : UNKNOWN;
            }
        }
        if (!attack.meant()) {
            return THREAT;
        }
        if (count.unmet().containsKey(target)) {
            return NOT_MET;
        }
        return count.end().attackOn(target).isPresent()
                ? NOT_YET
                : count.end().on(target).isKnown() ? EVADED : UNKNOWN;
    }

    private static Fate answered(Action action) {
        if (action instanceof Action.Parry || action instanceof Action.Place) {
            return PARRIED;
        }
        if (action instanceof Action.Answer) {
            return RECEIVED;
        }
        return action instanceof Action.Unread ? UNKNOWN : EVADED;
    }
}
