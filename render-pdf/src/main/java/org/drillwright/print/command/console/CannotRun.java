package org.drillwright.print.command.console;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.util.Map;

/** A command could not do its work. The message is one sentence for people. */
public final class CannotRun extends RuntimeException {

    /** What systems say (the C library's words for its error numbers), in plain words. */
    private static final Map<String, String> PLAIN = Map.of(
            "No space left on device", "the disk is full",
            "Disk quota exceeded", "your share of the disk is full",
            "Read-only file system", "nothing can be written to this disk",
            "File name too long", "its name is too long",
            "Input/output error", "the disk failed",
            "Is a directory", "it is a folder",
            "Operation not permitted", "the system does not permit it",
            "Too many levels of symbolic links", "its links lead in a circle");

    public CannotRun(String sentence) {
        super(sentence);
    }

    /** A sentence that ends with what the system said. */
    public CannotRun(String sentence, IOException problem) {
        super(sentence + ": " + reason(problem) + ".", problem);
    }

    private static String reason(IOException problem) {
        if (problem instanceof AccessDeniedException) {
            return "permission denied";
        }
        if (problem instanceof NoSuchFileException) {
            return "it is not there";
        }
        if (problem instanceof FileAlreadyExistsException) {
            return "there is a file where a folder is needed";
        }
        if (problem instanceof NotDirectoryException) {
            return "it is not a folder";
        }
        String said = problem instanceof FileSystemException system ? system.getReason() : problem.getMessage();
        return said == null || said.isBlank() ? "the system gave no reason" : plain(said.strip());
    }

    private static String plain(String said) {
        return PLAIN.getOrDefault(said, said);
    }
}
