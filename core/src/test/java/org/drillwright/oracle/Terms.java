package org.drillwright.oracle;

/**
 * What does not change through a phrase.
 *
 * @param guard the leader's guard at the start, to which one recovers
 * @param guardOfOther the follower's
 * @param engagedFirst whether the blades touched at the start
 * @param opposite whether one is left-handed and the other right-handed
 * @param wide whether blades are engaged, changed, beaten, pressed, bound and glided along, and attacks renewed
 */
record Terms(String guard, String guardOfOther, boolean engagedFirst, boolean opposite, boolean wide) {

    String guardOf(int who) {
        return who == 1 ? guard : guardOfOther;
    }

    /** A line of the one, named from the other's body (L'Abbat XXII; Burton 1876, section 2). */
    String across(String line) {
        return opposite ? Tables.passesTo(line) : line;
    }
}
