package org.drillwright.plan.schedule;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.drillwright.model.Drill;
import org.drillwright.model.Form;
import org.drillwright.plan.attendance.Attendance;
import org.drillwright.plan.published.GroupCells;
import org.drillwright.plan.published.PublishedClass;
import org.drillwright.plan.published.PublishedTerm;
import org.drillwright.plan.term.TermGroup;
import org.drillwright.register.Entry;
import org.drillwright.register.History;

/**
 * Drills that are called to a class, without partners. The record tells who worked with whom and so nothing of them: what the
 * published plan had in a class that was held counts as worked by all who came.
 */
final class Called {

    private Called() {}

    /** Those of a group, in its order. */
    static Set<String> among(TermGroup group, Map<String, Drill> drills) {
        Set<String> called = new LinkedHashSet<>();
        for (String drill : group.drills()) {
            Drill said = drills.get(drill);
            if (said != null && said.form() == Form.SOLO) {
                called.add(drill);
            }
        }
        return called;
    }

    /** As if each who came had worked them with the instructor. */
    static List<Entry> of(TermGroup group, PublishedTerm published, Attendance attendance, Map<String, Drill> drills) {
        Set<String> called = among(group, drills);
        List<Entry> entries = new ArrayList<>();
        for (PublishedClass one : published.classes()) {
            LocalDate day = one.date();
            Set<String> worked = new LinkedHashSet<>();
            one.of(group.name()).map(GroupCells::all).ifPresent(worked::addAll);
            worked.retainAll(called);
            for (String person : group.people()) {
                if (attendance.came(person, day)) {
                    worked.forEach(drill -> entries.add(Entry.workedWith(day, person, drill, History.INSTRUCTOR)));
                }
            }
        }
        return entries;
    }
}
