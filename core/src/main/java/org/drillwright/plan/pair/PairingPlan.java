package org.drillwright.plan.pair;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.plan.rounds.Method;

/**
 * Rounds of partners for a class.
 *
 * @param rounds all of them, those already played first
 * @param firstPlanned how many rounds at the beginning were already played
 * @param walk how people change over, one sentence each
 * @param shortages why not everyone has a partner, drill by drill
 * @param facts all that the instructor should know, one sentence each: shortages, choices, repeats, pairs of two new ones
 */
public record PairingPlan(
        List<Round> rounds,
        int firstPlanned,
        Method method,
        Verdict verdict,
        List<String> walk,
        List<Shortage> shortages,
        List<String> facts) {

    public PairingPlan {
        rounds = List.copyOf(rounds);
        walk = List.copyOf(walk);
        shortages = List.copyOf(shortages);
        facts = List.copyOf(facts);
    }

    /** Who goes to another place before a round, counted from 1; nobody before the first. */
    public List<String> movers(int round) {
        List<String> movers = new ArrayList<>();
        if (round > 1) {
            for (Group group : rounds.get(round - 1).groups()) {
                for (String person : group.people()) {
                    boolean stays = rounds.get(round - 2)
                            .groupOf(person)
                            .filter(before -> before.place() == group.place())
                            .isPresent();
                    if (!stays) {
                        movers.add(person);
                    }
                }
            }
        }
        return movers;
    }

    /** How many rounds join two. */
    public int meetings(String one, String other) {
        return (int) rounds.stream().filter(round -> round.joins(one, other)).count();
    }
}
