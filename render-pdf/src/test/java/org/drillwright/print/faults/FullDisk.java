package org.drillwright.print.faults;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A small disk in memory, mounted where it is told to; only root may do so, and only some systems let root. */
final class FullDisk implements AutoCloseable {

    private static final String FILL = "fill";

    private final Path place;

    private FullDisk(Path place) {
        this.place = place;
    }

    /** Mounts it, or skips the test and says why. */
    static FullDisk at(Path place) throws Exception {
        assumeTrue(System.getProperty("os.name").equals("Linux"), "a disk in memory is mounted on Linux only");
        assumeTrue(System.getProperty("user.name").equals("root"), "only root can mount a disk");
        Files.createDirectories(place);
        Started mount = command("mount", "-t", "tmpfs", "-o", "size=400k", "tmpfs", place.toString());
        assumeTrue(mount.code() == 0, "root may not mount here: " + mount.err());
        return new FullDisk(place);
    }

    /** Takes all the room that is left. */
    void fill() throws IOException {
        byte[] page = new byte[4096];
        try (var out = Files.newOutputStream(place.resolve(FILL))) {
            while (true) {
                out.write(page);
            }
        } catch (FileSystemException full) {
            throw full;
        } catch (IOException full) {
            // That is what was wanted.
        }
    }

    /** Gives the room back. */
    void empty() throws IOException {
        Files.delete(place.resolve(FILL));
    }

    /** Lets nobody write any more. */
    void seal() throws Exception {
        Started sealed = command("mount", "-o", "remount,ro", place.toString());
        assumeTrue(sealed.code() == 0, "root may not seal the disk: " + sealed.err());
    }

    @Override
    public void close() throws IOException {
        try {
            command("umount", place.toString());
        } catch (InterruptedException hurried) {
            Thread.currentThread().interrupt();
        }
    }

    private static Started command(String... words) throws IOException, InterruptedException {
        return Started.run(new ProcessBuilder(words));
    }
}
