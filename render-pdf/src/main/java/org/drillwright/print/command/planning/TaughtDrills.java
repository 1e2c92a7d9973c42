package org.drillwright.print.command.planning;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.drillwright.check.Subject;
import org.drillwright.model.Drill;
import org.drillwright.school.SchoolFolder;

/** The drills of a school in the order in which they are taught: set after set, then those in no set. */
public final class TaughtDrills {

    private TaughtDrills() {}

    public static List<Drill> of(SchoolFolder folder) {
        Map<String, Drill> drills = new LinkedHashMap<>();
        folder.school().sets().forEach(set -> add(folder.entriesOf(set), drills));
        add(folder.entries(), drills);
        return List.copyOf(drills.values());
    }

    private static void add(List<SchoolFolder.Entry> entries, Map<String, Drill> drills) {
        entries.stream()
                .flatMap(entry -> entry.subject().stream())
                .map(Subject::drill)
                .forEach(drill -> drills.putIfAbsent(drill.id(), drill));
    }
}
