package org.drillwright.print.command.console;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/**
 * A stream whose reader may leave, as {@code head} does: what is written from then on goes nowhere, and that is no fault.
 * Any other trouble, such as a full disk, stays one.
 */
final class Outlet extends FilterOutputStream {

    /** The kind of a file within its mode, and the kinds that have a reader (POSIX, sys/stat.h, as Linux and macOS number them). */
    private static final int KIND = 0170000;

    private static final int PIPE = 0010000;
    private static final int SOCKET = 0140000;

    private final int descriptor;
    private boolean left;

    /** @param descriptor the stream's number in the process */
    Outlet(OutputStream out, int descriptor) {
        super(out);
        this.descriptor = descriptor;
    }

    @Override
    public void write(int one) throws IOException {
        write(new byte[] {(byte) one}, 0, 1);
    }

    @Override
    public void write(byte[] bytes, int from, int length) throws IOException {
        if (left) {
            return;
        }
        try {
            out.write(bytes, from, length);
        } catch (IOException problem) {
            left = hasReader(problem);
            if (!left) {
                throw problem;
            }
        }
    }

    /** Windows names the pipe; elsewhere the system's words may be of any language, and the descriptor is asked. */
    private boolean hasReader(IOException problem) {
        String said = String.valueOf(problem.getMessage()).toLowerCase(Locale.ROOT);
        return said.contains("pipe") || isPipe();
    }

    private boolean isPipe() {
        try {
            Object mode = Files.getAttribute(Path.of("/dev/fd/" + descriptor), "unix:mode");
            int kind = mode instanceof Integer number ? number & KIND : 0;
            return kind == PIPE || kind == SOCKET;
        } catch (IOException | IllegalArgumentException | UnsupportedOperationException unknown) {
            return false;
        }
    }
}
