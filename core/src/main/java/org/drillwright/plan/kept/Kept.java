package org.drillwright.plan.kept;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.drillwright.mark.PlanMark;

/**
 * A plan with its mark.
 *
 * @param madeFrom a few figures of each file that it was made from, to say what has changed since; none if it isn't known
 */
public record Kept(PlanMark mark, KeptPlan plan, Map<String, String> madeFrom) {

    public Kept {
        madeFrom = Collections.unmodifiableMap(new LinkedHashMap<>(madeFrom));
    }

    /** What it was made from that is otherwise now. */
    public List<String> changedSince(Map<String, String> now) {
        return madeFrom.entrySet().stream()
                .filter(was -> !was.getValue().equals(now.getOrDefault(was.getKey(), was.getValue())))
                .map(Map.Entry::getKey)
                .toList();
    }
}
