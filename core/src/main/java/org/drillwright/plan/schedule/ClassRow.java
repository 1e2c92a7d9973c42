package org.drillwright.plan.schedule;

import java.util.List;
import org.drillwright.plan.progress.PersonDrill;
import org.drillwright.plan.term.TermDay;

/**
 * What one group does in a class.
 *
 * @param over whether it is over: then it tells what is on record
 * @param minutes that there are for drills
 * @param expected how many people, as a sum of chances; of a class that is over those who came
 * @param lacking who hasn't worked yet what comes again or is needed
 */
public record ClassRow(
        TermDay day,
        boolean over,
        List<Taught> asNew,
        List<Taught> again,
        int minutes,
        double expected,
        List<PersonDrill> lacking) {

    public ClassRow {
        asNew = List.copyOf(asNew);
        again = List.copyOf(again);
        lacking = List.copyOf(lacking);
    }

    /** Minutes of drills. */
    public int used() {
        return asNew.stream().mapToInt(Taught::minutes).sum()
                + again.stream().mapToInt(Taught::minutes).sum();
    }
}
