package org.drillwright.phrase;

import org.drillwright.model.Side;
import org.drillwright.wording.Message;

/**
 * When a move is played.
 *
 * @param by whose move it is
 * @param where the count in words, for what becomes unknown here
 * @param othersLunge whether the partner has lunged in this very count and not recovered
 * @param attacked whether the one who moves has sent a point or an edge at the partner before, in this drill
 * @param footFirst whether the one who moves stands in a lunge that was made without the arm
 * @param lungesNext whether the one who moves lunges on the next count
 */
record Moment(
        Side by,
        Message where,
        boolean othersLunge,
        Fact<Boolean> attacked,
        boolean footFirst,
        Fact<Boolean> lungesNext) {

    /** A move on its own, of which nothing is told before or behind. */
    static Moment alone(Side by, Message where, boolean othersLunge, Fact<Boolean> attacked) {
        return new Moment(by, where, othersLunge, attacked, false, Fact.of(false));
    }

    Side other() {
        return by.other();
    }
}
