package org.drillwright.print.command.filewatch;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.drillwright.school.DrillFiles;
import org.drillwright.school.Stamp;

/**
 * How the files of a school's folder were at a moment, without reading them.
 *
 * @param files each with what changes when it is saved; empty where that cannot be seen
 */
record FileStamps(Map<Path, Optional<Stamp>> files) {

    FileStamps {
        files = Map.copyOf(files);
    }

    /** Nothing, if the folder is gone or cannot be listed. */
    static FileStamps of(Path root) {
        Map<Path, Optional<Stamp>> files = new LinkedHashMap<>();
        try {
            DrillFiles.below(root).forEach(file -> files.put(file.path(), file.stamp()));
            DrillFiles.settings(root).ifPresent(file -> files.put(file, Stamp.at(file)));
        } catch (IOException gone) {
            files.clear();
        }
        return new FileStamps(files);
    }
}
