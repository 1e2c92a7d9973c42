package org.drillwright.print.command.watch.desk;

import java.util.List;

/**
 * What a reading found to be different.
 *
 * @param version of the desk after it
 * @param changed names of files that are new or say something else, or of which something else is to be said
 * @param gone names of files that are no longer there
 */
public record Change(int version, List<String> changed, List<String> gone) {

    public Change {
        changed = List.copyOf(changed);
        gone = List.copyOf(gone);
    }
}
