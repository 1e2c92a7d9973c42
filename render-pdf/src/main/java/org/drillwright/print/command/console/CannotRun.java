package org.drillwright.print.command.console;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.util.Map;
import java.util.Optional;
import org.drillwright.wording.Message;

/** A command could not do its work. The message is one sentence for people. */
public final class CannotRun extends RuntimeException {

    /** What systems say (the C library's words for its error numbers), and where our own words for it are. */
    private static final Map<String, String> PLAIN = Map.of(
            "No space left on device", "disk.full",
            "Disk quota exceeded", "share.full",
            "Read-only file system", "read.only",
            "File name too long", "name.too.long",
            "Input/output error", "disk.failed",
            "Is a directory", "is.folder",
            "Operation not permitted", "not.permitted",
            "Too many levels of symbolic links", "links.in.circle");

    private final transient Message message;

    public CannotRun(Message sentence) {
        super(sentence.english());
        this.message = sentence;
    }

    /** What could not be done, without a full stop; behind it stands what the system said. */
    public CannotRun(Message what, IOException problem) {
        super(because(what, problem).english(), problem);
        this.message = because(what, problem);
    }

    /** What people are told. */
    public Message message() {
        return message;
    }

    private static Message because(Message what, IOException problem) {
        return Message.of(CannotRun.class, "because", what, reason(problem));
    }

    private static Message reason(IOException problem) {
        if (problem instanceof AccessDeniedException) {
            return said("denied");
        }
        if (problem instanceof NoSuchFileException) {
            return said("not.there");
        }
        if (problem instanceof FileAlreadyExistsException) {
            return said("file.for.folder");
        }
        if (problem instanceof NotDirectoryException) {
            return said("no.folder");
        }
        String words = problem instanceof FileSystemException system ? system.getReason() : problem.getMessage();
        return words == null || words.isBlank() ? said("no.reason") : plain(words.strip());
    }

    private static Message plain(String words) {
        return Optional.ofNullable(PLAIN.get(words)).map(CannotRun::said).orElseGet(() -> Message.plain(words));
    }

    private static Message said(String key) {
        return Message.of(CannotRun.class, "reason." + key);
    }
}
