package org.drillwright.plan.walk;

import org.drillwright.plan.rounds.Method;

/**
 * Two lines of equal length face each other. The first stays; the second moves one post up a round, and whoever leaves the
 * last post walks round to the first. No two meet twice in as many rounds as a line is long, and then all have met across.
 *
 * @param length of one line
 */
record TwoLines(int length) implements Formation {

    @Override
    public Method method() {
        return Method.TWO_LINES;
    }

    @Override
    public int spots() {
        return 2 * length;
    }

    @Override
    public int still() {
        return length;
    }

    @Override
    public int facing(int round, int spot) {
        return spot < length ? length + Math.floorMod(spot - round, length) : post(round, spot);
    }

    @Override
    public int post(int round, int spot) {
        return spot < length ? spot : Math.floorMod(spot - length + round, length);
    }
}
