package org.drillwright.plan.kept;

import java.util.List;
import java.util.Optional;
import org.drillwright.mark.PlanMark;

/**
 * How a plan stands to what was printed.
 *
 * @param mark of the plan, if it was printed
 * @param hangs the mark of the plan that holds now, if one was printed
 * @param remarks what has changed since, one sentence each
 */
public record Standing(Optional<PlanMark> mark, Optional<PlanMark> hangs, List<String> remarks) {

    /** Of a class of which nothing was printed. */
    public static final Standing NEW = new Standing(Optional.empty(), Optional.empty(), List.of());

    public Standing {
        remarks = List.copyOf(remarks);
    }

    /** What is said of it, in one sentence. */
    public String sentence() {
        if (mark.isPresent()) {
            return "Printed as " + mark.get().shown() + ".";
        }
        return hangs.map(other -> "Not printed yet: " + other.shown() + " is on the wall and says something else.")
                .orElse("Not printed yet.");
    }
}
