package org.drillwright.plan.rounds;

/**
 * Two lines of equal length face each other. The first stands still; the second steps one place a round, and the one at
 * its end walks to the other end. No pair meets twice in as many rounds as a line is long.
 *
 * @param length of one line
 */
record TwoLines(int length) implements Formation {

    @Override
    public Method method() {
        return Method.TWO_LINES;
    }

    @Override
    public int posts() {
        return 2 * length;
    }

    @Override
    public int novicePosts() {
        return length;
    }

    @Override
    public int facing(int round, int post) {
        return post < length
                ? length + Math.floorMod(post + round, length)
                : Math.floorMod(post - length - round, length);
    }

    @Override
    public int place(int round, int post) {
        return post < length ? post : facing(round, post);
    }
}
