package org.drillwright.print.command.write;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.wording.Message;

/**
 * The one way in which files are written, other than by adding lines: beside their place first, then moved, so that
 * nobody ever sees half of one. A file that is there keeps its rights, and a link leads on to its file.
 */
public final class WholeFile {

    /** Bytes of a name; what Linux, macOS and Windows allow, or less. */
    private static final int LONGEST = 255;

    private static final String MARK = "\ufeff";

    private final Path file;
    private final Move move;

    /** How a part is moved over another file. */
    @FunctionalInterface
    interface Move {
        void move(PartFile part, Path to) throws IOException;
    }

    public WholeFile(Path file) {
        this(file, PartFile::replace);
    }

    WholeFile(Path file, Move move) {
        this.file = file;
        this.move = move;
    }

    /** What is said when a file was written. */
    public static Message written(Object file) {
        return Message.of(WholeFile.class, "whole-file.written", file);
    }

    /** Refuses a place that can't be that of a file, and says which. */
    static void mustTakeAFile(Path target) {
        if (String.valueOf(target.getFileName()).getBytes(StandardCharsets.UTF_8).length > LONGEST) {
            throw new CannotRun(Message.of(WholeFile.class, "whole-file.name.too.long", target));
        }
        if (Files.isDirectory(target)) {
            throw new CannotRun(Message.of(WholeFile.class, "whole-file.is.a.folder", target));
        }
        if (Files.exists(target) && !Files.isRegularFile(target)) {
            throw new CannotRun(Message.of(WholeFile.class, "whole-file.is.a.device", target));
        }
        if (Files.isSymbolicLink(target) && Files.notExists(target)) {
            throw new CannotRun(Message.of(WholeFile.class, "whole-file.is.a.broken.link", target));
        }
    }

    /**
     * Refuses a name that tells of another kind than what is to be written, and a place where something lies that is not a
     * document of ours to replace.
     *
     * @param kinds what can be written there; the first where the name says nothing of it
     */
    public void mustBeFree(Kind... kinds) {
        mustTakeAFile(file);
        Kind kind = Kind.of(file).filter(List.of(kinds)::contains).orElse(kinds[0]);
        try {
            Path target = followed();
            if (Files.isRegularFile(target) && Files.size(target) > 0 && !kind.isOf(target)) {
                throw new CannotRun(Message.of(WholeFile.class, "whole-file.is.another.kind", file, kind.said()));
            }
        } catch (IOException problem) {
            throw new CannotRun(Message.of(WholeFile.class, "whole-file.cannot.be.replaced", file), problem);
        }
        if (Kind.isNamedByKind(file) && Kind.of(file).filter(kind::equals).isEmpty()) {
            Message endings = Arrays.stream(kinds)
                    .map(Kind::ending)
                    .map(Message::plain)
                    .reduce((one, other) -> Message.of(WholeFile.class, "whole-file.or", one, other))
                    .orElseThrow();
            throw new CannotRun(Message.of(WholeFile.class, "whole-file.ending", file, kind.said(), endings));
        }
    }

    /** Where a link leads; replacing the link itself would surprise who made it. */
    private Path followed() throws IOException {
        return Files.isSymbolicLink(file) ? file.toRealPath() : file;
    }

    /** Writes all of it or nothing. */
    public void write(byte[] bytes) {
        take(beside(bytes));
    }

    /** Writes all of a text or nothing. */
    public void write(String text) {
        write(bytes(text));
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    /** Writes beside the place, under a name that nothing else has. */
    PartFile beside(byte[] bytes) {
        mustTakeAFile(file);
        try {
            return PartFile.write(followed(), bytes);
        } catch (IOException problem) {
            throw new CannotRun(Message.of(WholeFile.class, "whole-file.cannot.be.written", file), problem);
        }
    }

    /** Moves what was written beside into its place; where that can't be replaced, it is kept beside it and named. */
    void take(PartFile part) {
        try {
            move.move(part, followed());
        } catch (IOException held) {
            throw new CannotRun(kept(part, held));
        }
    }

    /** The new file keeps a name of its own beside the old one. */
    private Message kept(PartFile part, IOException held) {
        String name = String.valueOf(file.getFileName());
        Path renamed = file.resolveSibling(name.replaceFirst("(\\.\\w+)?$", "-new$1"));
        Message refused = new CannotRun(Message.of(WholeFile.class, "whole-file.could.not.be.replaced", file), held)
                .message()
                .then(Message.of(WholeFile.class, "whole-file.is.it.open"));
        try {
            move.move(part, renamed);
            return refused.then(Message.of(WholeFile.class, "whole-file.the.new.file.is", renamed));
        } catch (IOException again) {
            return refused.then(Message.of(WholeFile.class, "whole-file.the.new.file.is", part.path()));
        }
    }

    /**
     * Writes all of a text or nothing, over a file that a person wrote; refuses if that no longer holds what it did when
     * it was read.
     *
     * @param before all it held
     */
    public void replace(byte[] before, String text) {
        mustTakeAFile(file);
        try {
            Path target = followed();
            PartFile part = PartFile.write(target, bytes(text));
            try {
                if (!Arrays.equals(before, Files.readAllBytes(target))) {
                    throw changed();
                }
                move.move(part, target);
            } finally {
                part.discard();
            }
        } catch (IOException problem) {
            throw new CannotRun(Message.of(WholeFile.class, "whole-file.was.left", file), problem);
        }
    }

    /**
     * As {@link #replace}, of a file whose text was read before; the invisible mark at the beginning of some files is no
     * part of that text, and stays.
     */
    public void rewrite(String read, String text) {
        try {
            byte[] before = Files.readAllBytes(file);
            String mark = new String(before, StandardCharsets.UTF_8).startsWith(MARK) ? MARK : "";
            if (!Arrays.equals(before, bytes(mark + read))) {
                throw changed();
            }
            replace(before, mark + text);
        } catch (IOException problem) {
            throw new CannotRun(Message.of(WholeFile.class, "whole-file.cannot.be.read", file), problem);
        }
    }

    private CannotRun changed() {
        return new CannotRun(Message.of(WholeFile.class, "whole-file.was.changed", file));
    }

    /** Writes a new file, all of it or nothing; one that is there is left alone. */
    public void create(String text) {
        try {
            PartFile part = PartFile.write(file, bytes(text));
            try {
                part.placeNew();
            } finally {
                part.discard();
            }
        } catch (FileAlreadyExistsException there) {
            throw new CannotRun(Message.of(WholeFile.class, "whole-file.already.exists", file));
        } catch (IOException problem) {
            throw new CannotRun(Message.of(WholeFile.class, "whole-file.cannot.be.written", file), problem);
        }
    }
}
