package org.drillwright.plan.published;

import java.time.Instant;
import org.drillwright.mark.PlanMark;

/**
 * A published plan with its mark.
 *
 * @param published when it was
 */
public record Publication(PlanMark mark, Instant published, PublishedTerm term) {}
