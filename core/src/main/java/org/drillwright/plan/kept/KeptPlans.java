package org.drillwright.plan.kept;

import java.util.List;
import java.util.Optional;
import org.drillwright.mark.PlanMark;

/**
 * The plans of one class and day that were kept. Which of them holds is not written down: it is the one that no other
 * took over from.
 *
 * @param all in the order in which they were kept, as far as that is known
 */
public record KeptPlans(List<Kept> all) {

    public KeptPlans {
        all = List.copyOf(all);
    }

    /** Those that no other took over from: one, unless two were printed without knowing of each other. */
    public List<Kept> heads() {
        return Lineage.heads(all, Kept::mark, kept -> kept.plan().after());
    }

    public Optional<Kept> of(PlanMark mark) {
        return all.stream().filter(kept -> kept.mark().equals(mark)).findFirst();
    }

    /** The plan that a plan took over from; nothing if it is the first, or the other was deleted. */
    public Optional<Kept> before(Kept kept) {
        return kept.plan().after().flatMap(this::of);
    }
}
