package org.drillwright.school;

import java.nio.file.Path;
import java.util.Optional;

/**
 * A drill file as it was found in a folder.
 *
 * @param name below the folder, with forward slashes
 * @param stamp empty if the file could not be looked at
 * @param unsaved the text that counts instead of the file's own, if there is one
 */
public record DrillFile(Path path, String name, Optional<Stamp> stamp, Optional<String> unsaved) {

    DrillFile(Path path, String name, Optional<Stamp> stamp) {
        this(path, name, stamp, Optional.empty());
    }

    DrillFile with(Unsaved texts) {
        return new DrillFile(path, name, stamp, texts.text(path));
    }

    String id() {
        return DrillFiles.id(path);
    }
}
