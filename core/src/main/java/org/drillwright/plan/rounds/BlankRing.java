package org.drillwright.plan.rounds;

import java.util.Arrays;

/**
 * More are new to the drill than know it. Each who is new stands still at a place of the ring; those who know it move one
 * place a round, and with them as many gaps as are wanting, spread evenly. So after any number of rounds the turns
 * without a partner differ by one at most; and in as many rounds as there are places everyone who is new meets everyone
 * who knows it once.
 */
final class BlankRing implements Formation {

    private final int novices;
    private final int[] seat;
    private final int[] walker;

    /**
     * @param novices places of the ring
     * @param walkers those who move, fewer than {@code novices}, at least 1
     */
    BlankRing(int novices, int walkers) {
        this.novices = novices;
        this.seat = new int[novices];
        this.walker = new int[novices];
        Arrays.fill(walker, -1);
        for (int one = 0; one < walkers; one++) {
            sit(one, one * novices / walkers);
        }
        int gap = walkers;
        for (int place = 0; place < novices; place++) {
            if (walker[place] < 0) {
                sit(gap++, place);
            }
        }
    }

    private void sit(int one, int place) {
        seat[one] = place;
        walker[place] = one;
    }

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
                ? novices + walker[Math.floorMod(post - round, novices)]
                : Math.floorMod(seat[post - novices] + round, novices);
    }

    @Override
    public int place(int round, int post) {
        return post < novices ? post : facing(round, post);
    }
}
