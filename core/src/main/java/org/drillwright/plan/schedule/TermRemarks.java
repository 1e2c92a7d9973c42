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
import org.drillwright.register.History;
import org.drillwright.wording.Message;

/** What an instructor should know of a group's drills and people before the plan is trusted. */
final class TermRemarks {

    private TermRemarks() {}

    static List<Message> of(TermGroup group, Map<String, Drill> drills, Roster roster, History history) {
        List<Message> remarks = new ArrayList<>();
        Knowledge knowledge = Knowledge.of(roster, history);
        if (group.people().isEmpty()) {
            remarks.add(Message.of(TermRemarks.class, "nobody", group.name()));
        } else if (Attendance.of(history, group.people()).held().isEmpty()) {
            remarks.add(Message.of(TermRemarks.class, "no.class", group.name()));
        }
        Set<String> alone = Called.among(group, drills);
        if (!alone.isEmpty()) {
            remarks.add(Message.of(TermRemarks.class, "without.partners", Message.words(List.copyOf(alone))));
        }
        for (String drill : group.drills()) {
            needs(drill, group, drills, knowledge, remarks);
        }
        return remarks;
    }

    private static void needs(
            String drill, TermGroup group, Map<String, Drill> drills, Knowledge knowledge, List<Message> remarks) {
        List<String> needs = drills.containsKey(drill) ? drills.get(drill).needs() : List.of();
        for (String need : needs) {
            List<String> without = group.people().stream()
                    .filter(person -> !knowledge.knows(person, need) && !knowledge.knows(person, drill))
                    .toList();
            if (!group.drills().contains(need) && !without.isEmpty()) {
                remarks.add(Message.counted(
                        TermRemarks.class, "needs", without.size(), drill, need, group.name(), Message.words(without)));
            }
        }
    }
}
