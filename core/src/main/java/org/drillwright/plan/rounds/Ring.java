package org.drillwright.plan.rounds;

import java.util.Arrays;

/**
 * Those who know the drill stand on a ring and move one place a round; each one who is new stands still opposite a fixed
 * place, and the other places face each other in fixed pairs whose distances round the ring all differ. So in as many
 * rounds as the ring has places no pair meets twice, and no two who are new ever meet.
 */
final class Ring implements Formation {

    private final int novices;
    private final int[] across;
    private final int[] noviceAt;
    private final int[] spot;

    /**
     * @param novices at least 1; one who knows the drill may stand in for one
     * @param size of the ring, at least {@code novices}, and of the same parity
     */
    Ring(int novices, int size) {
        this.novices = novices;
        this.across = across(novices, size);
        this.noviceAt = new int[novices];
        this.spot = new int[size];
        int next = 0;
        for (int place = 0; place < size; place++) {
            if (across[place] < 0) {
                noviceAt[next] = place;
                across[place] = -1 - next;
                next++;
            }
        }
        numberSpots();
    }

    /** Each two places that face each other, and each place with one who stands still, are one spot on the floor. */
    private void numberSpots() {
        int next = 0;
        for (int place = 0; place < spot.length; place++) {
            boolean second = across[place] >= 0 && across[place] < place;
            spot[place] = second ? spot[across[place]] : next++;
        }
    }

    /** For each place the one it faces, or less than 0 where somebody new stands. */
    private static int[] across(int novices, int size) {
        int[] across = new int[size];
        Arrays.fill(across, -1);
        int pairs = (size - novices) / 2;
        for (int pair = 0; pair < pairs; pair++) {
            int[] places = size % 2 == 1 ? new int[] {pair + 1, size - pair - 1} : evenPair(pair, size);
            across[places[0]] = places[1];
            across[places[1]] = places[0];
        }
        return across;
    }

    /** Two nests of pairs: odd distances in the first half of the ring, even ones in the second. */
    private static int[] evenPair(int pair, int size) {
        int first = size / 4;
        int second = size % 4 == 0 ? first - 1 : first;
        return pair < first
                ? new int[] {pair, 2 * first - 1 - pair}
                : new int[] {2 * first + pair - first, 2 * first + 2 * second - (pair - first)};
    }

    @Override
    public Method method() {
        return Method.RING;
    }

    @Override
    public int posts() {
        return novices + across.length;
    }

    @Override
    public int novicePosts() {
        return novices;
    }

    @Override
    public int facing(int round, int post) {
        if (post < novices) {
            return walker(round, noviceAt[post]);
        }
        int facing = across[placeOf(round, post)];
        return facing < 0 ? -1 - facing : walker(round, facing);
    }

    private int placeOf(int round, int post) {
        return Math.floorMod(post - novices + round, across.length);
    }

    private int walker(int round, int place) {
        return novices + Math.floorMod(place - round, across.length);
    }

    @Override
    public int place(int round, int post) {
        return spot[post < novices ? noviceAt[post] : placeOf(round, post)];
    }
}
