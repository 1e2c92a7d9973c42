package org.drillwright.plan.pair;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drillwright.plan.rounds.Method;
import org.drillwright.wording.Message;

/**
 * Rounds of partners for a class.
 *
 * @param rounds all of them, those already played first
 * @param firstPlanned how many rounds at the beginning were already played
 * @param verdict how good it is known to be; nothing of a plan that is shown as it was printed
 * @param walks the rounds that are walked by two lines
 * @param changes how people change over, the rule last
 * @param shortages why not everyone has a partner, drill by drill
 * @param watched drills in which some who are new work together by choice, somebody's eyes on them
 * @param facts all that the instructor should know, one sentence each: shortages, choices, repeats, pairs of two new ones
 */
public record PairingPlan(
        List<Round> rounds,
        int firstPlanned,
        Method method,
        Optional<Verdict> verdict,
        List<Walk> walks,
        List<Changeover> changes,
        List<Shortage> shortages,
        List<Watch> watched,
        List<Message> facts) {

    public PairingPlan {
        rounds = List.copyOf(rounds);
        walks = List.copyOf(walks);
        changes = List.copyOf(changes);
        shortages = List.copyOf(shortages);
        watched = List.copyOf(watched);
        facts = List.copyOf(facts);
    }

    /** Rounds as they were printed, of which nothing else is known any more. */
    public static PairingPlan printed(List<Round> rounds, int worked, List<Walk> walks) {
        return new PairingPlan(
                rounds,
                worked,
                Method.KEPT,
                Optional.empty(),
                walks,
                Changeovers.of(rounds, walks),
                List.of(),
                List.of(),
                List.of());
    }

    /** Whether one comes to a round, counted from 1, by one step of a movement. */
    public boolean isStepped(int round) {
        return method == Method.RING
                ? round > firstPlanned + 1
                : walk(round).filter(walk -> walk.from() < round).isPresent();
    }

    /** The two lines of a round, counted from 1; empty if it is read from the sheet. */
    public Optional<Walk> walk(int round) {
        return walks.stream().filter(walk -> walk.holds(round)).findFirst();
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
