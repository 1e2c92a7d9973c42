package org.drillwright.print.command.watch.desk;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.drillwright.school.SchoolFolder;

/** Holds what was last read of a folder. */
public final class Desk {

    private final Path root;
    private volatile Snapshot now;

    private Desk(Path root, Snapshot now) {
        this.root = root;
        this.now = now;
    }

    /** @throws IOException if the folder cannot be listed */
    public static Desk open(Path root) throws IOException {
        return new Desk(root, Snapshot.of(SchoolFolder.open(root), Optional.empty()));
    }

    public Snapshot now() {
        return now;
    }

    /** Reads the folder again; what changed, if anything did. Problems are shown, never thrown. */
    public synchronized Optional<Change> look() {
        Snapshot before = now;
        Snapshot after = read(before);
        if (before.says(after)) {
            return Optional.empty();
        }
        now = after;
        return Optional.of(before.to(after));
    }

    private Snapshot read(Snapshot before) {
        try {
            return Snapshot.of(SchoolFolder.open(root), Optional.of(before));
        } catch (IOException gone) {
            return before.troubled("The folder cannot be read any more; what is shown is from before.");
        } catch (RuntimeException fault) {
            return before.troubled("A fault in Drillwright itself: this save could not be read ("
                    + fault.getClass().getSimpleName() + ").");
        }
    }
}
