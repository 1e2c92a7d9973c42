package org.drillwright.print.command.write;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.Set;
import org.drillwright.print.command.folder.Locations;

/**
 * A file in the making. It lies beside its place under a name that nobody can foresee, and is moved once all of it has
 * reached the disk: whoever pulls the plug finds the old file or the new one.
 *
 * @param path where it lies
 * @param target the file it was begun for
 */
record PartFile(Path path, Path target) {

    /** What the names of such files end in; they are never read as drills. */
    static final String ENDING = ".part";

    /** Bits of chance in a part's name. */
    private static final int CHANCE = Long.SIZE;

    /** Characters of the target's name that a part's name repeats, each of up to 4 bytes. */
    private static final int NAME = 40;

    private static final SecureRandom RANDOM = new SecureRandom();

    /** Writes all of a file beside its place, and nothing if that fails. */
    static PartFile write(Path target, byte[] bytes) throws IOException {
        Files.createDirectories(Locations.folderOf(target.toAbsolutePath()));
        Path path = target.resolveSibling(name(target));
        try (FileChannel channel = FileChannel.open(
                path,
                Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS),
                Rights.whileWriting(target))) {
            writeAll(channel, bytes);
        } catch (FileAlreadyExistsException anothers) {
            throw anothers;
        } catch (IOException | RuntimeException | Error problem) {
            discard(path);
            throw problem;
        }
        LeftParts.sweep(path);
        return new PartFile(path, target);
    }

    /** Writes bytes at the channel's place and waits until the disk has them. */
    static void writeAll(FileChannel channel, byte[] bytes) throws IOException {
        ByteBuffer left = ByteBuffer.wrap(bytes);
        while (left.hasRemaining()) {
            channel.write(left);
        }
        channel.force(true);
    }

    private static String name(Path target) {
        byte[] chance = new byte[CHANCE / Byte.SIZE];
        RANDOM.nextBytes(chance);
        String name = String.valueOf(target.getFileName());
        String shown =
                name.substring(0, name.offsetByCodePoints(0, Math.min(NAME, name.codePointCount(0, name.length()))));
        return shown + "." + ProcessHandle.current().pid() + "-"
                + HexFormat.of().formatHex(chance) + ENDING;
    }

    /** Moves it into its place, over what is there, whose rights it gets. */
    void replace(Path place) throws IOException {
        Rights.keep(Files.exists(place) ? place : target, path);
        try {
            Files.move(path, place, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException unsupported) {
            Files.move(path, place, StandardCopyOption.REPLACE_EXISTING);
        }
        forceFolder(place);
    }

    /**
     * Moves it into a place where nothing is.
     *
     * @throws FileAlreadyExistsException if something is there, be it since a moment ago
     */
    void placeNew() throws IOException {
        try {
            Files.createLink(target, path);
        } catch (FileAlreadyExistsException there) {
            throw there;
        } catch (IOException | UnsupportedOperationException noLinks) {
            Files.move(path, target);
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

    void discard() {
        discard(path);
    }

    static void discard(Path file) {
        try {
            Files.deleteIfExists(file);
        } catch (IOException stays) {
            // What could not be written cannot be deleted either; there is nothing more to be done about it.
        }
    }
}
