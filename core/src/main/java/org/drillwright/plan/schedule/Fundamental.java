package org.drillwright.plan.schedule;

import java.time.LocalDate;
import java.util.Optional;

/**
 * A drill that isn't to be let lie.
 *
 * @param every the most weeks between two workings
 * @param last when it was worked last
 * @param next when it is planned next
 */
public record Fundamental(String drill, int every, Optional<LocalDate> last, Optional<LocalDate> next) {}
