package org.drillwright.plan.schedule;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.drillwright.plan.attendance.Attendance;
import org.drillwright.plan.attendance.DrillDays;
import org.drillwright.plan.course.Asked;
import org.drillwright.plan.roster.Knowledge;
import org.drillwright.plan.term.TermGroup;

/**
 * How a group stands, by what is on record.
 *
 * @param knowledge who knows what today
 * @param alone drills without partners
 * @param known which of the group's drills, in their order, needed no introduction when the term began
 */
record GroupState(
        TermGroup group,
        Attendance attendance,
        DrillDays worked,
        Knowledge knowledge,
        Set<String> alone,
        List<Boolean> known) {

    GroupState {
        alone = Set.copyOf(alone);
        known = List.copyOf(known);
    }

    /** The days on which a drill was the group's. */
    List<LocalDate> days(String drill) {
        return worked.ofGroup(group.people(), drill, attendance);
    }

    /** On how many days somebody worked a drill; {@link Asked#ENOUGH} for who knows it. */
    int done(String person, String drill) {
        return knowledge.knows(person, drill)
                ? Asked.ENOUGH
                : worked.of(person, drill).size();
    }

    boolean lacks(String person, String drill) {
        return done(person, drill) == 0;
    }

    /** Those of the group who have never worked a drill and don't know it. */
    List<String> lacking(String drill) {
        return group.people().stream().filter(person -> lacks(person, drill)).toList();
    }
}
