package org.drillwright.plan.pair;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.drillwright.plan.roster.BothNew;
import org.drillwright.plan.roster.ClassPractice;
import org.drillwright.plan.roster.First;
import org.drillwright.plan.roster.LeftOver;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Who leads first stands first in a group. */
class LeadsTest {

    private static final ClassPractice KNOWER = new ClassPractice(LeftOver.THREES, BothNew.NEEDED, 12, First.KNOWER);

    /** How much oftener each leads first than not, in pairs. */
    private static Map<String, Integer> balance(PairingPlan plan) {
        Map<String, Integer> balance = new HashMap<>();
        for (Round round : plan.rounds()) {
            for (Group group : round.groups()) {
                if (group.people().size() == 2) {
                    balance.merge(group.people().get(0), 1, Integer::sum);
                    balance.merge(group.people().get(1), -1, Integer::sum);
                }
            }
        }
        return balance;
    }

    @ParameterizedTest(name = "{0} new, {1} know it, {2} rounds")
    @CsvSource({"4,4,4", "3,5,5", "0,8,7", "8,0,7", "0,7,5", "5,5,3", "0,2,1"})
    void nobody_leads_first_more_than_once_oftener_than_not(int fresh, int knowing, int rounds) {
        for (PairingPlan plan : List.of(
                Classes.of(fresh, knowing).rounds(rounds).plan(),
                Classes.of(fresh, knowing).rounds(rounds).walk().plan())) {
            balance(plan).forEach((name, more) -> assertTrue(Math.abs(more) <= 1, name + ": " + more));
        }
    }

    /** Four and four in two lines: who stands leads in odd rounds, who walks in even ones. */
    @Test
    void in_two_lines_the_lines_lead_by_turns() {
        PairingPlan plan = Classes.of(0, 8).rounds(4).walk().plan();
        Set<String> standing = Set.of("B0", "B1", "B2", "B3");
        for (Round round : plan.rounds()) {
            for (Group group : round.groups()) {
                assertEquals(
                        round.number() % 2 == 1,
                        standing.contains(group.people().get(0)),
                        plan::toString);
            }
        }
    }

    @Test
    void whoever_knows_it_leads_first_where_that_is_wanted() {
        for (Round round : Classes.of(3, 5).rounds(4).ways(KNOWER).plan().rounds()) {
            for (Group group : round.groups()) {
                assertTrue(group.people().get(0).startsWith("B"), group::toString);
            }
        }
    }

    /** Four new and two who know it: these stand in the middle and lead first, whatever is wanted. */
    @Test
    void in_a_three_the_one_in_the_middle_leads_first() {
        for (Round round : Classes.of(4, 2).noInstructor().rounds(3).plan().rounds()) {
            for (Group group : round.groups()) {
                assertEquals(group.people().get(0), group.middle().orElseThrow());
                assertTrue(group.people().get(0).startsWith("B"), group::toString);
            }
        }
    }
}
