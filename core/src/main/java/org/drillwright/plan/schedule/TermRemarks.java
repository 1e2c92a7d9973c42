package org.drillwright.plan.schedule;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.drillwright.model.Drill;
import org.drillwright.plan.attendance.Attendance;
import org.drillwright.plan.roster.Knowledge;
import org.drillwright.plan.roster.Roster;
import org.drillwright.plan.term.TermGroup;
import org.drillwright.record.History;

/** What an instructor should know of a group's drills and people before the plan is trusted. */
final class TermRemarks {

    private TermRemarks() {}

    static List<String> of(TermGroup group, Map<String, Drill> drills, Roster roster, History history) {
        List<String> remarks = new ArrayList<>();
        Knowledge knowledge = Knowledge.of(roster, history);
        if (group.people().isEmpty()) {
            remarks.add("There is nobody in the group " + group.name() + ", so nobody is expected.");
        } else if (Attendance.of(history, group.people()).held().isEmpty()) {
            remarks.add("No class of the group " + group.name() + " is on record, so everybody is expected.");
        }
        Set<String> alone = Called.among(group, drills);
        if (!alone.isEmpty()) {
            remarks.add("The record says who worked with whom, so it says nothing about drills without partners: "
                    + String.join(", ", alone) + ". They count as worked by everyone who came to a class that"
                    + " had them in the published plan.");
        }
        for (String drill : group.drills()) {
            needs(drill, group, drills, knowledge, remarks);
        }
        return remarks;
    }

    private static void needs(
            String drill, TermGroup group, Map<String, Drill> drills, Knowledge knowledge, List<String> remarks) {
        List<String> needs = drills.containsKey(drill) ? drills.get(drill).needs() : List.of();
        for (String need : needs) {
            List<String> without = group.people().stream()
                    .filter(person -> !knowledge.knows(person, need) && !knowledge.knows(person, drill))
                    .toList();
            if (!group.drills().contains(need) && !without.isEmpty()) {
                remarks.add(drill + " needs " + need + ", which the group " + group.name() + " isn't taught and "
                        + String.join(", ", without) + (without.size() == 1 ? " doesn't know." : " don't know."));
            }
        }
    }
}
