package org.drillwright.plan.published;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.drillwright.mark.PlanMark;
import org.drillwright.plan.kept.Lineage;

/**
 * The published plans of one term.
 *
 * @param all in any order
 */
public record Publications(List<Publication> all) {

    public Publications {
        all = List.copyOf(all);
    }

    /** Those that no other took over from: one, unless two were published without knowing of each other. */
    public List<Publication> heads() {
        return Lineage.heads(all, Publication::mark, plan -> plan.term().after());
    }

    public Optional<Publication> of(PlanMark mark) {
        return all.stream().filter(plan -> plan.mark().equals(mark)).findFirst();
    }

    /** From the first plan up to one, each behind the one that it took over from. */
    public List<Publication> upTo(Publication last) {
        List<Publication> line = new ArrayList<>();
        Optional<Publication> next = Optional.of(last);
        while (next.isPresent() && !line.contains(next.get())) {
            line.add(next.get());
            next = next.get().term().after().flatMap(this::of);
        }
        Collections.reverse(line);
        return line;
    }
}
