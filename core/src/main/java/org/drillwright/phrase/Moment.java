package org.drillwright.phrase;

import org.drillwright.model.Side;

/**
 * When a move is played.
 *
 * @param by whose move it is
 * @param where the count in words, for what becomes unknown here
 * @param othersLunge whether the partner has lunged in this very count and not recovered
 * @param attacked whether the one who moves has sent a point or an edge at the partner before, in this drill
 * @param footFirst whether the one who moves stands in a lunge that was made without the arm
 */
record Moment(Side by, String where, boolean othersLunge, Fact<Boolean> attacked, boolean footFirst) {

    Side other() {
        return by.other();
    }
}
