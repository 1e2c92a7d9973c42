package org.drillwright.translation;

import java.util.List;
import java.util.Optional;
import org.drillwright.model.Side;
import org.drillwright.notation.Action;
import org.drillwright.notation.Utterance;

/** Whether two texts that were read say the same. */
final class Same {

    private Same() {}

    /** What is done, and by whom if it is said. */
    record Deed(Action action, Optional<Side> who) {}

    /** Whether all of a text was read, and nothing of it is open. */
    static boolean isWhole(Utterance read) {
        return read.isRead() && read.open().isEmpty() && read.readings().isEmpty();
    }

    /** Whether all that it tells is done by the one whose turn it is; what is told to both may tell of either. */
    static boolean isOfOne(Utterance read, Optional<Side> side) {
        return side.isEmpty()
                || read.clauses().stream()
                        .allMatch(clause -> clause.subject()
                                .filter(who -> !side.equals(Optional.of(who)))
                                .isEmpty());
    }

    /** Whether what was read of other words is just what was meant. */
    static boolean says(Utterance said, Utterance meant, Optional<Side> side) {
        return isWhole(said) && deeds(said, side).equals(deeds(meant, side));
    }

    /** In one's own turn it does not matter whether one is named. */
    static List<Deed> deeds(Utterance read, Optional<Side> side) {
        return read.clauses().stream()
                .map(clause ->
                        new Deed(clause.action(), clause.subject().filter(who -> !side.equals(Optional.of(who)))))
                .toList();
    }
}
