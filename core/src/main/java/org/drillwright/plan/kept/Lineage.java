package org.drillwright.plan.kept;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.drillwright.mark.PlanMark;

/** Plans that take over from each other. Which of them holds is not written down. */
public final class Lineage {

    private Lineage() {}

    /** Those that no other took over from, in their order. */
    public static <T> List<T> heads(List<T> all, Function<T, PlanMark> mark, Function<T, Optional<PlanMark>> after) {
        Set<PlanMark> takenOver =
                all.stream().flatMap(plan -> after.apply(plan).stream()).collect(Collectors.toSet());
        return all.stream()
                .filter(plan -> !takenOver.contains(mark.apply(plan)))
                .toList();
    }
}
