package org.drillwright.print.command.printing;

import java.util.Optional;
import org.drillwright.print.layout.CardSubject;
import org.drillwright.school.DrillFiles;
import org.drillwright.school.SchoolFolder.Entry;

/**
 * A drill that was picked for printing.
 *
 * @param place where it stands in its set, if it is in one
 */
public record Pick(Entry entry, Optional<CardSubject.Place> place) {

    public String id() {
        return DrillFiles.id(entry.file());
    }

    /** Whether there is a whole drill to print; a file never half-loads. */
    public boolean isReadable() {
        return entry.subject().isPresent();
    }
}
