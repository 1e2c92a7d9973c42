package org.drillwright.print.command.write;

import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.print.command.folder.Locations;

/** Puts a whole file in its place: written beside it first, then moved, so that nobody ever sees half of it. */
public final class OutputFile {

    /** How the kinds of files begin that this program writes and may therefore replace. */
    private static final Map<String, byte[]> BEGINNINGS = Map.of(
            "PDF", new byte[] {'%', 'P', 'D', 'F'},
            "PNG", new byte[] {(byte) 0x89, 'P', 'N', 'G'});

    private final Path target;
    private final Move move;

    /** How a file is moved over another. */
    @FunctionalInterface
    interface Move {
        void move(Path from, Path to) throws IOException;
    }

    public OutputFile(Path target) {
        this(target, OutputFile::replace);
    }

    OutputFile(Path target, Move move) {
        this.target = followed(target);
        this.move = move;
    }

    /** Where a link leads; replacing the link itself would surprise who made it. */
    private static Path followed(Path target) {
        try {
            return Files.isSymbolicLink(target) ? target.toRealPath() : target;
        } catch (IOException leadsNowhere) {
            return target;
        }
    }

    /** Refuses a place where something lies that is not a document of ours to replace. */
    public void mustBeFree() {
        if (Files.isDirectory(target)) {
            throw new CannotRun("'" + target + "' is a folder; name a file in it.");
        }
        try {
            if (Files.isRegularFile(target) && Files.size(target) > 0 && !isOfItsKind()) {
                throw new CannotRun(
                        "'" + target + "' is there already and is not a " + kind() + "; it was left alone.");
            }
        } catch (IOException problem) {
            throw new CannotRun("'" + target + "' cannot be replaced", problem);
        }
    }

    private String kind() {
        return String.valueOf(target.getFileName()).toLowerCase(Locale.ROOT).endsWith(".png") ? "PNG" : "PDF";
    }

    private boolean isOfItsKind() throws IOException {
        byte[] beginning = BEGINNINGS.getOrDefault(kind(), new byte[0]);
        try (var in = Files.newInputStream(target)) {
            return Arrays.equals(in.readNBytes(beginning.length), beginning);
        }
    }

    /** Writes all of it or nothing. */
    public void write(byte[] bytes) {
        take(writeBeside(bytes, 1));
    }

    /** Writes beside the place, under a name that no other process uses. */
    Path writeBeside(byte[] bytes, int number) {
        Path beside = target.resolveSibling(
                target.getFileName() + "." + ProcessHandle.current().pid() + "-" + number + ".part");
        try {
            Files.createDirectories(Locations.folderOf(target));
            Files.write(beside, bytes);
        } catch (IOException problem) {
            discard(beside);
            throw new CannotRun("'" + target + "' cannot be written", problem);
        }
        return beside;
    }

    /** Moves what was written beside into its place. */
    void take(Path beside) {
        try {
            move.move(beside, target);
        } catch (IOException held) {
            throw new CannotRun(kept(beside));
        }
    }

    /** The new file keeps a name of its own beside the old one. */
    private String kept(Path beside) {
        String name = String.valueOf(target.getFileName());
        Path renamed = target.resolveSibling(name.replaceFirst("(\\.\\w+)?$", "-new$1"));
        String refused = "'" + target + "' could not be replaced: another program holds it open. ";
        try {
            move.move(beside, renamed);
            return refused + "The new file is '" + renamed + "'.";
        } catch (IOException again) {
            return refused + "The new file is '" + beside + "'.";
        }
    }

    static void discard(Path file) {
        try {
            Files.deleteIfExists(file);
        } catch (IOException stays) {
            // What could not be written cannot be deleted either; there is nothing more to be done about it.
        }
    }

    private static void replace(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException unsupported) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }
}
