package org.drillwright.check;

import java.util.List;
import java.util.Optional;
import org.drillwright.model.School;
import org.drillwright.source.Places;
import org.drillwright.source.SourceFile;

/**
 * All that a folder holds.
 *
 * @param settings the file that the school's settings were read from, if there is one
 * @param places where each setting stands
 * @param drills every drill that could be read, in the order of their files
 */
public record Folder(School school, Optional<SourceFile> settings, Places places, List<Subject> drills) {

    public Folder {
        drills = List.copyOf(drills);
    }
}
