package org.drillwright.plan.rounds;

/**
 * More are new to the drill than know it. Each who is new stands still at a place of the ring; those who know it move one
 * place a round, and with them as many gaps as are wanting. In as many rounds as there are places everyone who is new
 * meets everyone who knows it once, and each has the same number of turns without a partner.
 *
 * @param novices places of the ring
 */
record BlankRing(int novices) implements Formation {

    @Override
    public Method method() {
        return Method.BLANK_RING;
    }

    @Override
    public int posts() {
        return 2 * novices;
    }

    @Override
    public int novicePosts() {
        return novices;
    }

    @Override
    public int facing(int round, int post) {
        return post < novices
                ? novices + Math.floorMod(post - round, novices)
                : Math.floorMod(post - novices + round, novices);
    }

    @Override
    public int place(int round, int post) {
        return post < novices ? post : facing(round, post);
    }
}
