package org.drillwright.plan.proof;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.OptionalLong;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Two lines that meet across: by hand, and against every half of the people that there is. */
class LineSplitsTest {

    /** Meetings cost 1 between 0 and 1 and between 2 and 3, 10 between 0 and 2: apart stand 0 and 1, and 2 and 3. */
    private static int cost(int one, int other) {
        return switch (Math.min(one, other) + "-" + Math.max(one, other)) {
            case "0-1", "2-3" -> 1;
            case "0-2" -> 10;
            default -> 0;
        };
    }

    @Test
    void four_people() {
        assertEquals(OptionalLong.of(2), new LineSplits(4, (one, other) -> true, LineSplitsTest::cost).least());
    }

    /** If 0 and 1 may not meet, they stand in one line, and 0 meets 2. */
    @Test
    void two_who_may_not_meet_stand_in_one_line() {
        assertEquals(
                OptionalLong.of(10), new LineSplits(4, (one, other) -> one + other != 1, LineSplitsTest::cost).least());
    }

    @Test
    void three_of_four_fill_no_line_and_of_thirty_there_are_too_many() {
        assertEquals(
                OptionalLong.empty(),
                new LineSplits(4, (one, other) -> one == 3 || other == 3, LineSplitsTest::cost).least());
        assertEquals(OptionalLong.empty(), new LineSplits(30, (one, other) -> true, LineSplitsTest::cost).least());
    }

    @Test
    void every_half_of_a_hundred_classes() {
        Random chance = new Random(3);
        for (int at = 0; at < 100; at++) {
            int people = 2 * (2 + chance.nextInt(4));
            int[][] costs = new int[people][people];
            boolean[][] apart = new boolean[people][people];
            for (int one = 0; one < people; one++) {
                for (int other = 0; other < one; other++) {
                    costs[one][other] = costs[other][one] = chance.nextInt(9);
                    apart[one][other] = apart[other][one] = chance.nextInt(8) == 0;
                }
            }
            assertEquals(
                    slowly(people, costs, apart),
                    new LineSplits(people, (one, other) -> !apart[one][other], (one, other) -> costs[one][other])
                            .least(),
                    () -> Arrays.deepToString(costs));
        }
    }

    private static OptionalLong slowly(int people, int[][] costs, boolean[][] apart) {
        long least = Long.MAX_VALUE;
        for (int half = 0; half < 1 << people; half++) {
            if (Integer.bitCount(half) != people / 2) {
                continue;
            }
            long sum = 0;
            for (int one = 0; one < people; one++) {
                for (int other = 0; other < people; other++) {
                    if ((half >> one & 1) == 1 && (half >> other & 1) == 0) {
                        sum = apart[one][other] || sum < 0 ? -1 : sum + costs[one][other];
                    }
                }
            }
            least = sum < 0 ? least : Math.min(least, sum);
        }
        return least == Long.MAX_VALUE ? OptionalLong.empty() : OptionalLong.of(least);
    }
}
