package org.drillwright.phrase;

import java.util.Locale;
import java.util.Optional;
import org.drillwright.model.Side;
import org.drillwright.notation.Action;
import org.drillwright.notation.Position;

/** How an attack ends within its count. What the words claim and the phrase refuses is not how it ends. */
public sealed interface AttackEnd {

    /** The name by which a file of words knows it, such as {@code past.parry}. */
    String key();

    /**
     * The parry closes its line.
     *
     * @param by the position, if it is named
     */
    record Parried(Optional<Position> by) implements AttackEnd {
        @Override
        public String key() {
            return "parried";
        }
    }

    /** A parry that does not close its line, and so it arrives. */
    record PastTheParry(Position by) implements AttackEnd {
        @Override
        public String key() {
            return "past.parry";
        }
    }

    /** The touch is taken, offered or owned to. */
    record Received() implements AttackEnd {
        @Override
        public String key() {
            return "received";
        }
    }

    /** It cannot reach from where it is made. */
    record FallsShort() implements AttackEnd {
        @Override
        public String key() {
            return "short";
        }
    }

    /**
     * The target is taken out of its way.
     *
     * @param how where it is taken; not stated of one who steps back
     */
    record Evaded(Action.Displacement how) implements AttackEnd {
        @Override
        public String key() {
            return how == Action.Displacement.UNSTATED
                    ? "evaded"
                    : "evaded." + how.name().toLowerCase(Locale.ROOT);
        }
    }

    /** A stop hit arrives before it. */
    record Stopped() implements AttackEnd {
        @Override
        public String key() {
            return "stopped";
        }
    }

    /** Nobody meets it, and so it arrives. */
    record NotMet() implements AttackEnd {
        @Override
        public String key() {
            return "not.met";
        }
    }

    /** Its owner leaves off or goes on to another stroke before it is answered. */
    record Withdrawn() implements AttackEnd {
        @Override
        public String key() {
            return "withdrawn";
        }
    }

    /** A feint or a mere extension that a parry follows. */
    record DrewParry() implements AttackEnd {
        @Override
        public String key() {
            return "drew.parry";
        }
    }

    /** A feint or a mere extension to which no answer is owed. */
    record Threat() implements AttackEnd {
        @Override
        public String key() {
            return "threat";
        }
    }

    /** The count ends before it does. */
    record UnderWay() implements AttackEnd {
        @Override
        public String key() {
            return "not.yet";
        }
    }

    /** What decides is not known. */
    record Unknown() implements AttackEnd {
        @Override
        public String key() {
            return "unknown";
        }
    }

    /** The end of the attack that a move of a count launched, moves numbered from 0; empty if the move launched none. */
    static Optional<AttackEnd> of(Count count, int move) {
        return AttackEnds.of(count, move);
    }

    /** The end within a count of the attack at one side that was under way when it began; empty if there was none. */
    static Optional<AttackEnd> ofPending(Count count, Side target) {
        return AttackEnds.ofPending(count, target);
    }
}
