package org.drillwright.school;

import java.util.List;
import org.drillwright.plan.kept.KeptPlans;
import org.drillwright.source.Finding;

/**
 * The kept plans of one class and day.
 *
 * @param findings of files that may be plans of it but can't be taken for one; none of them is among the plans
 */
public record ReadPlans(KeptPlans plans, List<Finding> findings) {

    public ReadPlans {
        findings = List.copyOf(findings);
    }
}
