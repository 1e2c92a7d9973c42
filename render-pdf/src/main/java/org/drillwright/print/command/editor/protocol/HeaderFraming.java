package org.drillwright.print.command.editor.protocol;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;

/** Messages as they come in: a head of lines, an empty line, and so many bytes (LSP 3.17, Base Protocol). */
public final class HeaderFraming {

    /** Bytes of one message: more than the longest text that is held needs, even if each of its signs is escaped. */
    public static final int MOST_BYTES = 16 * 1024 * 1024;

    /** Bytes of one head. */
    public static final int MOST_HEAD = 4096;

    /** Lists and objects of a message inside one another; those of the protocol come to a dozen. */
    public static final int DEEPEST = 200;

    private static final String LENGTH = "content-length:";

    private final InputStream in;

    /** What came is no message, and where the next one begins cannot be told. Its message is a sentence for the author. */
    static final class Unreadable extends Exception {

        private static final long serialVersionUID = 1L;

        Unreadable(String sentence) {
            super(sentence);
        }
    }

    HeaderFraming(InputStream in) {
        this.in = new BufferedInputStream(in);
    }

    /** The next message; nothing at the end of the pipe, be it in the middle of one. */
    Optional<String> next() throws IOException, Unreadable {
        Optional<Integer> length = length();
        if (length.isEmpty()) {
            return Optional.empty();
        }
        byte[] body = in.readNBytes(length.get());
        return body.length < length.get() ? Optional.empty() : Optional.of(new String(body, StandardCharsets.UTF_8));
    }

    private Optional<Integer> length() throws IOException, Unreadable {
        Optional<Integer> length = Optional.empty();
        StringBuilder line = new StringBuilder();
        int read = 0;
        for (int next = in.read(); next >= 0; next = in.read()) {
            if (++read > MOST_HEAD) {
                throw new Unreadable("The head of a message is longer than " + MOST_HEAD + " bytes.");
            }
            if (next != '\n') {
                line.append((char) next);
                continue;
            }
            String field = line.toString().strip();
            line.setLength(0);
            if (!field.isEmpty()) {
                length = field(field, length);
            } else if (length.isPresent()) {
                return length;
            } else {
                throw new Unreadable("A message came without its length.");
            }
        }
        return Optional.empty();
    }

    /** Fields other than the length say nothing that is not so anyway. */
    private static Optional<Integer> field(String field, Optional<Integer> before) throws Unreadable {
        if (field.indexOf(':') < 0) {
            throw new Unreadable("What came is no message of the Language Server Protocol.");
        }
        if (!field.toLowerCase(Locale.ROOT).startsWith(LENGTH)) {
            return before;
        }
        String figures = field.substring(LENGTH.length()).strip();
        if (!figures.matches("[0-9]{1,18}")) {
            throw new Unreadable("The length of a message is no number.");
        }
        long bytes = Long.parseLong(figures);
        if (bytes > MOST_BYTES) {
            throw new Unreadable("A message has " + bytes + " bytes; " + MOST_BYTES + " are the most.");
        }
        if (before.filter(other -> other != bytes).isPresent()) {
            throw new Unreadable("A message came with two lengths.");
        }
        return Optional.of((int) bytes);
    }
}
