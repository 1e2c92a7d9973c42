package org.drillwright.print.command.watch.desk;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.drillwright.school.SchoolFolder;

/** Holds what was last read of a folder. */
public final class Desk {

    private final SchoolFolder.Progress progress;
    private volatile Snapshot now;

    private Desk(Snapshot now, SchoolFolder.Progress progress) {
        this.progress = progress;
        this.now = now;
    }

    /** @throws IOException if the folder cannot be listed */
    public static Desk open(Path root) throws IOException {
        return open(root, (done, all) -> {});
    }

    /** @param progress told of each file that is read, now and later */
    static Desk open(Path root, SchoolFolder.Progress progress) throws IOException {
        return new Desk(Snapshot.of(SchoolFolder.open(root, progress), Optional.empty()), progress);
    }

    public Snapshot now() {
        return now;
    }

    /** Reads again what may have changed in the folder; what changed, if anything did. Problems are shown, never thrown. */
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
            return Snapshot.of(before.folder().again(progress), Optional.of(before));
        } catch (IOException gone) {
            return before.troubled("The folder cannot be read any more; what is shown is from before.");
        } catch (RuntimeException fault) {
            return before.troubled("A fault in Drillwright itself: this save could not be read ("
                    + fault.getClass().getSimpleName() + ").");
        }
    }
}
