package org.drillwright.print.command.folder;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.wording.Message;

/** Paths as people type them. */
public final class Locations {

    private Locations() {}

    /** The path, seen from a folder, if there is something there. */
    public static Optional<Path> existing(Path from, String typed) {
        return path(from, typed).filter(Files::exists);
    }

    /** The path, seen from a folder; nothing if the system has no such paths. */
    public static Optional<Path> path(Path from, String typed) {
        try {
            return Optional.of(from.resolve(typed).toAbsolutePath().normalize());
        } catch (InvalidPathException impossible) {
            return Optional.empty();
        }
    }

    /** The file that is to be written, seen from a folder; what cannot be the name of one is refused. */
    public static Path file(Path from, String typed) {
        return path(from, typed)
                .filter(path -> path.getFileName() != null)
                .orElseThrow(() -> new CannotRun(Message.of(Locations.class, "locations.cannot.be.the.name", typed)));
    }

    /** The folder that holds a file. */
    public static Path folderOf(Path file) {
        return Optional.ofNullable(file.getParent()).orElse(file);
    }

    /** A path with its links followed, so that two ways to one file are one. */
    static Path real(Path path) {
        try {
            return path.toRealPath();
        } catch (IOException gone) {
            return path.toAbsolutePath().normalize();
        }
    }
}
