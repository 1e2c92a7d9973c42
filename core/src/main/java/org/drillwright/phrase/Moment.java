package org.drillwright.phrase;

import org.drillwright.model.Side;

/**
 * When a move is played.
 *
 * @param by whose move it is
 * @param where the count in words, for what becomes unknown here
 * @param othersLunge whether the partner has lunged in this very count and not recovered
 */
record Moment(Side by, String where, boolean othersLunge) {

    Side other() {
        return by.other();
    }
}
