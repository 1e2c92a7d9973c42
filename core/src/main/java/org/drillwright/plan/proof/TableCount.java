package org.drillwright.plan.proof;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiPredicate;
import java.util.function.IntPredicate;

/** How many tables there are, counted without making one. */
public final class TableCount {

    private final int students;
    private final int helpers;
    private final BiPredicate<Integer, Integer> together;
    private final IntPredicate fresh;
    private final BiPredicate<Integer, Integer> watched;
    private final Map<List<Integer>, Long> known = new HashMap<>();

    /**
     * @param students and helpers, at most 20 of both; the helpers' numbers follow the students'
     * @param together whether two aren't kept apart
     * @param fresh whether a student is new to the drill
     * @param watched whether two who are new may work together
     */
    public TableCount(
            int students,
            int helpers,
            BiPredicate<Integer, Integer> together,
            IntPredicate fresh,
            BiPredicate<Integer, Integer> watched) {
        this.students = students;
        this.helpers = helpers;
        this.together = together;
        this.fresh = fresh;
        this.watched = watched;
    }

    /**
     * In how many ways a round can be filled.
     *
     * @param helped how many work with a helper
     * @param threes groups of three, the one in the middle and the one who joins told apart
     * @param eyes meetings of two new ones: one in a pair, two in a three
     * @param alone how many are alone
     */
    public long rounds(int helped, int threes, int eyes, int alone) {
        return ways(0, helped, threes, eyes, alone);
    }

    private long ways(int taken, int helped, int threes, int eyes, int alone) {
        int one = Integer.numberOfTrailingZeros(~taken);
        if (helped < 0 || threes < 0 || eyes < 0 || alone < 0) {
            return 0;
        }
        if (one >= students) {
            return helped + threes + eyes + alone == 0 ? 1 : 0;
        }
        List<Integer> key = List.of(taken, helped, threes, eyes, alone);
        Long before = known.get(key);
        if (before != null) {
            return before;
        }
        int with = taken | 1 << one;
        long ways = ways(with, helped, threes, eyes, alone - 1);
        for (int helper = students; helper < students + helpers; helper++) {
            if ((taken >> helper & 1) == 0 && together.test(one, helper)) {
                ways += ways(with | 1 << helper, helped - 1, threes, eyes, alone);
            }
        }
        for (int other = one + 1; other < students; other++) {
            if ((taken >> other & 1) == 0) {
                int both = with | 1 << other;
                if (isPair(one, other)) {
                    ways += ways(both, helped, threes, eyes - unseen(List.of(one, other)), alone);
                }
                for (int third = other + 1; third < students; third++) {
                    if ((taken >> third & 1) == 0) {
                        List<Integer> all = List.of(one, other, third);
                        ways += threes(all) * ways(both | 1 << third, helped, threes - 1, eyes - unseen(all), alone);
                    }
                }
            }
        }
        known.put(key, ways);
        return ways;
    }

    private int unseen(List<Integer> group) {
        return group.stream().allMatch(fresh::test) ? group.size() - 1 : 0;
    }

    private boolean isPair(int one, int other) {
        return together.test(one, other) && (!(fresh.test(one) && fresh.test(other)) || watched.test(one, other));
    }

    /** In how many ways three can be told apart as middle, partner and third: whoever knows the drill is in the middle. */
    private long threes(List<Integer> all) {
        long ways = 0;
        List<Integer> ends = new ArrayList<>();
        for (int middle : all) {
            ends.clear();
            all.stream().filter(one -> one != middle).forEach(ends::add);
            boolean served = unseen(all) > 0 || !fresh.test(middle);
            boolean good = served
                    && together.test(ends.get(0), ends.get(1))
                    && isPair(middle, ends.get(0))
                    && isPair(middle, ends.get(1));
            ways += good ? 2 : 0;
        }
        return ways;
    }

    /** In how many ways rounds can be chosen of some that may be taken again, the order of no account. */
    public static BigInteger choices(long kinds, int rounds) {
        BigInteger choices = BigInteger.ONE;
        for (int round = 0; round < rounds; round++) {
            choices = choices.multiply(BigInteger.valueOf(kinds + round)).divide(BigInteger.valueOf(round + 1L));
        }
        return choices;
    }
}
