package org.drillwright.print.command.live;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.drillwright.school.SchoolFolder;
import org.drillwright.school.Unsaved;
import org.drillwright.wording.Message;

/** Holds what was last read of a folder. */
public final class LiveSchool {

    private final SchoolFolder.Progress progress;
    private volatile Snapshot now;

    private LiveSchool(Snapshot now, SchoolFolder.Progress progress) {
        this.progress = progress;
        this.now = now;
    }

    /** @throws IOException if the folder cannot be listed */
    public static LiveSchool open(Path root) throws IOException {
        return open(root, (done, all) -> {});
    }

    /** @param progress told of each file that is read, now and later */
    static LiveSchool open(Path root, SchoolFolder.Progress progress) throws IOException {
        return new LiveSchool(Snapshot.of(SchoolFolder.open(root, progress), Optional.empty()), progress);
    }

    /** A school without a folder, of single texts. */
    public static LiveSchool of(SchoolFolder texts) {
        return new LiveSchool(Snapshot.of(texts, Optional.empty()), (done, all) -> {});
    }

    public Snapshot now() {
        return now;
    }

    /** Reads again what may have changed in the folder; what changed, if anything did. Problems are shown, never thrown. */
    public Optional<SchoolUpdate> look() {
        return take(folder -> folder.again(progress));
    }

    /**
     * Takes texts that are not saved in place of those from before, without a look at the folder; what that changed, if
     * anything. Problems are shown, never thrown.
     */
    public Optional<SchoolUpdate> edit(Unsaved texts) {
        return take(folder -> folder.with(texts));
    }

    /** Another reading of a folder. */
    @FunctionalInterface
    private interface Again {
        SchoolFolder of(SchoolFolder folder) throws IOException;
    }

    private synchronized Optional<SchoolUpdate> take(Again again) {
        Snapshot before = now;
        Snapshot after = read(before, again);
        if (before.says(after)) {
            // What lies beside the drills, which no sheet shows, may be another all the same.
            now = after.of(before.version());
            return Optional.empty();
        }
        now = after;
        return Optional.of(before.to(after));
    }

    private static Snapshot read(Snapshot before, Again again) {
        try {
            return Snapshot.of(again.of(before.folder()), Optional.of(before));
        } catch (IOException gone) {
            return before.troubled(Message.of(LiveSchool.class, "school.gone"));
        } catch (RuntimeException fault) {
            return before.troubled(Message.of(
                    LiveSchool.class, "school.fault", fault.getClass().getSimpleName()));
        }
    }
}
