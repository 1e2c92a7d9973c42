package org.drillwright.print.command.watch.saves;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillwright.school.DrillFiles;

/**
 * How the files of a school's folder were at a moment, without reading them.
 *
 * @param files each with what changes when it is saved; empty where that cannot be seen
 */
record Stamp(Map<Path, Optional<Seen>> files) {

    /** When a file was written, and how large it is, in bytes. */
    record Seen(FileTime written, long size) {}

    Stamp {
        files = Map.copyOf(files);
    }

    /** Nothing, if the folder is gone or cannot be listed. */
    static Stamp of(Path root) {
        Map<Path, Optional<Seen>> files = new LinkedHashMap<>();
        try {
            List<Path> found = new ArrayList<>(DrillFiles.below(root));
            DrillFiles.settings(root).ifPresent(found::add);
            found.forEach(file -> files.put(file, seen(file)));
        } catch (IOException gone) {
            files.clear();
        }
        return new Stamp(files);
    }

    private static Optional<Seen> seen(Path file) {
        try {
            BasicFileAttributes attributes = Files.readAttributes(file, BasicFileAttributes.class);
            return Optional.of(new Seen(attributes.lastModifiedTime(), attributes.size()));
        } catch (IOException gone) {
            return Optional.empty();
        }
    }
}
