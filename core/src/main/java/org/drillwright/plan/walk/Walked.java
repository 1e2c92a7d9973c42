package org.drillwright.plan.walk;

import java.util.List;
import java.util.Optional;
import org.drillwright.plan.rounds.Extras;
import org.drillwright.plan.rounds.Solution;

/**
 * A table, and how a class changes over.
 *
 * @param formings in the order of their rounds; rounds of none of them are read from the sheet
 * @param obstacles the drills that no forming serves
 * @param least for each round, the extras that it needs, walked or not
 * @param isBeaten whether it could be walked, but more would meet again
 */
public record Walked(
        Solution solution, List<Forming> formings, List<Obstacle> obstacles, List<Extras> least, boolean isBeaten) {

    public Walked {
        formings = List.copyOf(formings);
        obstacles = List.copyOf(obstacles);
        least = List.copyOf(least);
    }

    /** The forming of a round, counted from 0; empty if it is read from the sheet. */
    public Optional<Forming> at(int round) {
        return formings.stream().filter(forming -> forming.holds(round)).findFirst();
    }

    /** Whether more people work with a helper, or are thirds, than need be, for the sake of the walk. */
    public boolean takesMore() {
        return !solution.extras().equals(least);
    }
}
