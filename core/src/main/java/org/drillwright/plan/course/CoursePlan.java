package org.drillwright.plan.course;

import java.util.List;
import java.util.Optional;

/**
 * What came of planning a course.
 *
 * @param cells of each class to come
 * @param row what it costs
 */
public record CoursePlan(Course course, List<Cells> cells, Row row, CourseBound bound) {

    public CoursePlan {
        cells = List.copyOf(cells);
    }

    /** Whether no plan is better, as far as {@link Goal#EARLY}. */
    public boolean isProvedBest() {
        return row.upTo(Goal.EARLY).compareTo(bound.row()) == 0;
    }

    /** The class to come in which a drill is new; nothing if it is new in none. */
    public Optional<Integer> newIn(int drill) {
        for (int at = 0; at < cells.size(); at++) {
            if (cells.get(at).asNew().contains(drill)) {
                return Optional.of(at);
            }
        }
        return Optional.empty();
    }
}
