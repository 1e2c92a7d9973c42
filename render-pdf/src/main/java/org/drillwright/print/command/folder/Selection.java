package org.drillwright.print.command.folder;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.school.SchoolFolder;
import org.drillwright.school.SchoolFolder.Entry;

/**
 * The drills that a command was told to look at.
 *
 * @param entries each once, in the order in which they were named
 * @param whole whether that is the whole school
 */
public record Selection(List<Entry> entries, boolean whole) {

    public Selection {
        entries = List.copyOf(entries);
    }

    /** @param named paths and ids; all of the school if there are none */
    public static Selection of(SchoolFolder school, Invocation run, List<String> named) {
        if (named.isEmpty()) {
            return new Selection(school.entries(), true);
        }
        DrillSearch search = new DrillSearch(school, run);
        Set<Entry> entries = new LinkedHashSet<>();
        boolean whole = false;
        for (String name : named) {
            List<Entry> found = search.find(name);
            entries.addAll(found);
            whole |= found.size() == school.entries().size() && search.isWhole(name);
        }
        return new Selection(List.copyOf(entries), whole);
    }
}
