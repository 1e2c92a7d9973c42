package org.drillwright.check;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.drillwright.model.School;
import org.drillwright.source.SourceFile;
import org.drillwright.source.SourcePlaces;

/**
 * All that a folder holds.
 *
 * @param settings the file that the school's settings were read from, if there is one
 * @param places where each setting stands
 * @param drills every drill that could be read, in the order of their files
 * @param unread ids of files that are there and could not be read
 */
public record Folder(
        School school, Optional<SourceFile> settings, SourcePlaces places, List<Subject> drills, Set<String> unread) {

    public Folder {
        drills = List.copyOf(drills);
        unread = Set.copyOf(unread);
    }

    /** A folder in which every file could be read. */
    public Folder(School school, Optional<SourceFile> settings, SourcePlaces places, List<Subject> drills) {
        this(school, settings, places, drills, Set.of());
    }
}
