package org.drillwright.print.command.write;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.print.command.folder.Locations;
import org.drillwright.wording.Message;

/**
 * A file in the making. It lies beside its place under a name that no other process uses, and is moved once all of it
 * has reached the disk: whoever pulls the plug finds the old file or the new one.
 */
final class Part {

    /** What the names of such files end in; they are never read as drills. */
    static final String ENDING = ".part";

    /** Bytes of a name; what Linux, macOS and Windows allow, or less. */
    private static final int LONGEST = 255;

    /** Characters of the target's name that a part's name repeats, each of up to 4 bytes. */
    private static final int NAME = 40;

    private Part() {}

    /** Refuses a place that can't be that of a file, and says which. */
    static void mustTakeAFile(Path target) {
        if (String.valueOf(target.getFileName()).getBytes(StandardCharsets.UTF_8).length > LONGEST) {
            throw new CannotRun(Message.of(Part.class, "part.cannot.be.written.its", target));
        }
        if (Files.isDirectory(target)) {
            throw new CannotRun(Message.of(Part.class, "part.is.a.folder.name", target));
        }
        if (Files.exists(target) && !Files.isRegularFile(target)) {
            throw new CannotRun(Message.of(Part.class, "part.is.a.device.or", target));
        }
        if (Files.isSymbolicLink(target) && Files.notExists(target)) {
            throw new CannotRun(Message.of(Part.class, "part.is.a.broken.link", target));
        }
    }

    /** Where a link leads; replacing the link itself would surprise who made it. */
    static Path followed(Path target) throws IOException {
        return Files.isSymbolicLink(target) ? target.toRealPath() : target;
    }

    /**
     * Writes all of a file beside its place, and nothing if that fails.
     *
     * @param number tells apart the parts that one process makes
     */
    static Path write(Path target, byte[] bytes, int number) throws IOException {
        Path part = beside(target, number);
        Files.createDirectories(Locations.folderOf(target.toAbsolutePath()));
        try (FileChannel channel = FileChannel.open(
                part, StandardOpenOption.CREATE, StandardOpenOption.WRITE, StandardOpenOption.TRUNCATE_EXISTING)) {
            writeAll(channel, bytes);
            return part;
        } catch (IOException | RuntimeException | Error problem) {
            discard(part);
            throw problem;
        }
    }

    /** Writes bytes at the channel's place and waits until the disk has them. */
    static void writeAll(FileChannel channel, byte[] bytes) throws IOException {
        ByteBuffer left = ByteBuffer.wrap(bytes);
        while (left.hasRemaining()) {
            channel.write(left);
        }
        channel.force(true);
    }

    private static Path beside(Path target, int number) {
        return target.resolveSibling(
                shownName(target) + "." + ProcessHandle.current().pid() + "-" + number + ENDING);
    }

    /** What the names of a file's parts begin with. */
    static String shownName(Path target) {
        String name = String.valueOf(target.getFileName());
        return name.substring(0, name.offsetByCodePoints(0, Math.min(NAME, name.codePointCount(0, name.length()))));
    }

    /** Moves a part into its place, over what is there. */
    static void replace(Path part, Path target) throws IOException {
        try {
            Files.move(part, target, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException unsupported) {
            Files.move(part, target, StandardCopyOption.REPLACE_EXISTING);
        }
        forceFolder(target);
    }

    /** The move itself reaches the disk with the folder; some systems don't let a folder be opened for that. */
    private static void forceFolder(Path file) {
        try (FileChannel folder =
                FileChannel.open(Locations.folderOf(file.toAbsolutePath()), StandardOpenOption.READ)) {
            folder.force(true);
        } catch (IOException notHere) {
            // Then the system writes it in its own time.
        }
    }

    static void discard(Path part) {
        try {
            Files.deleteIfExists(part);
        } catch (IOException stays) {
            // What could not be written cannot be deleted either; there is nothing more to be done about it.
        }
    }
}
