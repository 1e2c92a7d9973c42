package org.drillwright.print.command.live;

import java.util.List;
import java.util.Map;

/**
 * What a reading found to be different.
 *
 * @param version of the school after it
 * @param saved names of files that are new or say something else
 * @param changed names of files that are new or say something else, or of which something else is to be said
 * @param gone names of files that are no longer there, nor under another name
 * @param renamed new names by old ones
 */
public record SchoolUpdate(
        int version, List<String> saved, List<String> changed, List<String> gone, Map<String, String> renamed) {

    public SchoolUpdate {
        saved = List.copyOf(saved);
        changed = List.copyOf(changed);
        gone = List.copyOf(gone);
        renamed = Map.copyOf(renamed);
    }
}
