package org.drillwright.plan.walk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.drillwright.plan.roster.BothNew;
import org.drillwright.plan.rounds.Extras;
import org.drillwright.plan.rounds.Method;
import org.drillwright.plan.rounds.Objective;
import org.drillwright.plan.rounds.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How an evening is parted into formings, against all ways to part it. */
class WalksTest {

    private static BitSet first(int novices) {
        BitSet bits = new BitSet();
        bits.set(0, novices);
        return bits;
    }

    private static List<String> drills(int count, int rounds) {
        List<String> drills = new ArrayList<>();
        IntStream.range(0, count).forEach(drill -> drills.addAll(Collections.nCopies(rounds, "drill " + drill)));
        return drills;
    }

    private static String usual(Problem problem) {
        Walked walked = new Walks(problem, Collections.nCopies(problem.rounds(), "thrust")).usual();
        return walked.formings().stream()
                .findFirst()
                .map(forming -> walked.solution().method() + " of "
                        + (forming.stays().size() + forming.moves().size()))
                .orElse("none");
    }

    @ParameterizedTest(name = "{0} new, {1} know it, {2} help, {3} rounds: {4}")
    @CsvSource({
        "0,6,0,3,TWO_LINES of 6",
        "0,6,0,4,RING of 6",
        "0,6,0,5,RING of 6",
        "0,6,0,6,none", // each has but five others; three who meet again are fewer than in lines
        "2,4,0,3,TWO_LINES of 6",
        "2,4,0,4,RING of 6", // the ring has four places
        "2,2,0,2,TWO_LINES of 4", // as many know it as don't: nobody is left
        "2,2,0,3,TWO_LINES of 4", // nobody has a third partner, so lines are as good as any
        "0,5,1,3,TWO_LINES of 6", // the helper makes up the sixth
        "0,5,0,3,TWO_LINES of 6", // or a gap
        "3,2,0,3,TWO_LINES of 6",
        "3,0,0,1,none", // nobody walks
        "3,0,1,1,TWO_LINES of 6",
        "0,0,0,1,none",
        "0,4,0,0,none"
    })
    void a_single_drill_is_walked_as_long_as_nobody_need_meet_again(
            int fresh, int knowing, int helpers, int rounds, String movement) {
        assertEquals(movement, usual(new Problem(fresh + knowing, helpers, Collections.nCopies(rounds, first(fresh)))));
    }

    /** No fewer formings serve than are found, and so many do: all ways to part the drills are looked at. */
    @Test
    void the_fewest_formings_are_found() {
        Random random = new Random(2);
        int[] seen = new int[5];
        for (int run = 0; run < 250; run++) {
            int count = 1 + random.nextInt(4);
            int students = 2 + random.nextInt(5);
            Problem problem = RandomEvenings.of(random, students, count);
            List<Extras> least = Extras.ofAll(problem);
            Walks walks = new Walks(problem, drills(count, students));
            int fewest = fewest(problem, least, students, count);
            assertEquals(fewest, walks.fewest(), "run " + run);
            seen[fewest]++;
        }
        assertTrue(IntStream.of(0, 1, 2, 3).allMatch(formings -> seen[formings] > 4), "all must come up");
    }

    /** Of all ways to cut between drills the one with the fewest parts; drills that nothing serves stand by themselves. */
    private static int fewest(Problem problem, List<Extras> least, int rounds, int drills) {
        int fewest = Integer.MAX_VALUE;
        for (int cuts = 0; cuts < 1 << (drills - 1); cuts++) {
            int formings = 0;
            boolean serves = true;
            int from = 0;
            for (int drill = 0; drill < drills; drill++) {
                if (drill == drills - 1 || (cuts >> drill & 1) == 1) {
                    boolean served = EveryDealing.serves(problem, least, from * rounds, (drill + 1) * rounds);
                    serves &= served || from == drill;
                    formings += served ? 1 : 0;
                    from = drill + 1;
                }
            }
            fewest = serves ? Math.min(fewest, formings) : fewest;
        }
        return fewest;
    }

    /**
     * Eight people, two drills of four rounds, nobody new. One forming: all sixteen pairs across meet twice. Two: of the
     * second lines half stood in either of the first, so eight of sixteen are new to each other, and more can't be. Free: 32
     * meetings of 28 pairs. So the sheet is read, unless somebody asks otherwise.
     */
    @Test
    void more_formings_cost_fewer_repeats() {
        Walks walks = new Walks(new Problem(8, 0, Collections.nCopies(8, new BitSet())), drills(2, 4));
        assertEquals(1, walks.fewest());
        assertEquals(16, repeats(walks.of(1).orElseThrow()));
        assertEquals(8, repeats(walks.of(2).orElseThrow()));
        assertEquals(4, repeats(walks.free()));
        assertEquals(List.of(), walks.usual().formings());
        assertTrue(walks.usual().isBeaten());
        assertTrue(walks.of(3).isEmpty());
        assertEquals(2, walks.nearest(3).orElseThrow().formings().size());
    }

    private static long repeats(Walked walked) {
        return walked.solution().cost().of(Objective.REPEATS);
    }

    /**
     * Of six, 0, 1 and 2 are new to the second drill, and 3 and 4 are kept from 0: five in one line. It is read, and the two
     * others are walked.
     */
    @Test
    void a_drill_that_nothing_serves_is_read_alone() {
        List<BitSet> novices = new ArrayList<>(Collections.nCopies(9, first(0)));
        Collections.fill(novices.subList(3, 6), first(3));
        Walks walks = new Walks(new Problem(6, 0, novices).apart(0, 3).apart(0, 4), drills(3, 3));
        assertEquals(List.of(new Obstacle(3, 6, Obstacle.Why.ONE_LINE, List.of(0, 1, 2, 3, 4), 0)), walks.obstacles());
        assertEquals(List.of(2, 2), List.of(walks.fewest(), walks.most()));
        Walked walked = walks.of(2).orElseThrow();
        assertEquals(
                List.of(true, false, true),
                IntStream.of(2, 3, 6)
                        .mapToObj(round -> walked.at(round).isPresent())
                        .toList());
        for (int round = 0; round < 9; round++) {
            for (int student = 0; student < 6; student++) {
                int mate = walked.solution().table().mate(round, student);
                assertEquals(student, walked.solution().table().mate(round, mate));
                assertTrue(walked.solution().problem().permits(round, student, mate));
            }
        }
    }

    /** Five new and three who know it: two are alone in any plan of the second drill, so its lines have two gaps. */
    @Test
    void where_some_are_alone_anyhow_lines_have_gaps() {
        List<BitSet> novices = List.of(first(0), first(0), first(5), first(5), first(0), first(0));
        Walked walked = new Walks(new Problem(8, 0, novices).ways(false, BothNew.NEVER, 12), drills(3, 2)).usual();
        assertEquals(List.of(), walked.obstacles());
        for (int round = 0; round < 6; round++) {
            for (int student = 0; student < 8; student++) {
                int mate = walked.solution().table().mate(round, student);
                assertTrue(mate == 8 || walked.solution().table().mate(round, mate) == student);
                assertFalse(mate < 8 && round / 2 == 1 && student < 5 && mate < 5);
            }
        }
        assertEquals(Method.TWO_LINES, walked.solution().method());
    }

    /** 0 may only work with 3, so two lines, in which it meets two, don't serve: 0-3 and 1-2 work together twice. */
    @Test
    void a_movement_that_would_break_a_rule_is_not_walked() {
        Problem problem = new Problem(4, 0, List.of(new BitSet(), new BitSet()))
                .apart(0, 1)
                .apart(0, 2);
        Walked walked = new Walks(problem, drills(1, 2)).usual();
        assertEquals(List.of(), walked.formings());
        assertEquals(2, walked.solution().cost().of(Objective.REPEATS));
    }

    /** Six kept apart in pairs 0-3, 1-4 and 2-5 fall into three parts of two; but for one round they can be dealt to lines. */
    @Test
    void few_rounds_need_less_than_that_all_may_meet_across() {
        Problem problem = new Problem(6, 0, List.of(new BitSet()));
        problem.apart(0, 3).apart(1, 4).apart(2, 5);
        assertTrue(new Dealing(problem, Extras.ofAll(problem), 0, 1)
                .lines(new BitSet())
                .isEmpty());
        Walked walked = new Walks(problem, drills(1, 1)).usual();
        assertEquals(1, walked.formings().size());
        assertTrue(
                IntStream.range(0, 3).noneMatch(one -> walked.solution().table().mate(0, one) == one + 3));
    }
}
