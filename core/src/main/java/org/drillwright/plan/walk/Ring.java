package org.drillwright.plan.walk;

import java.util.Arrays;
import org.drillwright.plan.rounds.Method;

/**
 * Those who know the drill stand on a ring and move one place a round; each one who is new stands still opposite a fixed
 * place, and the other places face each other in fixed pairs whose distances round the ring all differ. So in as many
 * rounds as the ring has places no pair meets twice, and no two who are new ever meet.
 */
final class Ring implements Formation {

    private final int novices;
    private final int[] across;
    private final int[] noviceAt;
    private final int[] postOf;

    /**
     * @param novices at least 1; one who knows the drill may stand in for one
     * @param size of the ring, at least {@code novices}, and of the same parity
     */
    Ring(int novices, int size) {
        this.novices = novices;
        this.across = across(novices, size);
        this.noviceAt = new int[novices];
        this.postOf = new int[size];
        int next = 0;
        for (int place = 0; place < size; place++) {
            if (across[place] < 0) {
                noviceAt[next] = place;
                across[place] = -1 - next;
                next++;
            }
        }
        numberPosts();
    }

    /** Each two places that face each other, and each place with one who stands still, are one post on the floor. */
    private void numberPosts() {
        int next = 0;
        for (int place = 0; place < postOf.length; place++) {
            boolean second = across[place] >= 0 && across[place] < place;
            postOf[place] = second ? postOf[across[place]] : next++;
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
    public int spots() {
        return novices + across.length;
    }

    @Override
    public int still() {
        return novices;
    }

    @Override
    public int facing(int round, int spot) {
        if (spot < novices) {
            return walker(round, noviceAt[spot]);
        }
        int facing = across[placeOf(round, spot)];
        return facing < 0 ? -1 - facing : walker(round, facing);
    }

    private int placeOf(int round, int spot) {
        return Math.floorMod(spot - novices + round, across.length);
    }

    private int walker(int round, int place) {
        return novices + Math.floorMod(place - round, across.length);
    }

    @Override
    public int post(int round, int spot) {
        return postOf[spot < novices ? noviceAt[spot] : placeOf(round, spot)];
    }
}
