package org.drillwright.school;

import java.nio.file.Path;
import java.util.Optional;

/**
 * A drill file as it was found in a folder.
 *
 * @param name below the folder, with forward slashes
 * @param stamp empty if the file could not be looked at
 */
public record DrillFile(Path path, String name, Optional<Stamp> stamp) {

    String id() {
        return DrillFiles.id(path);
    }
}
