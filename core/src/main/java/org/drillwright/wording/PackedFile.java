package org.drillwright.wording;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** A file that the program is packed with. */
public final class PackedFile {

    private PackedFile() {}

    /**
     * All that it says.
     *
     * @param room a class that it lies beside
     * @throws IllegalStateException if the program was packed without it
     */
    public static String text(Class<?> room, String file) {
        return new String(bytes(room, file), StandardCharsets.UTF_8);
    }

    /** The same as bytes. */
    public static byte[] bytes(Class<?> room, String file) {
        return ifThere(room, file)
                .orElseThrow(() -> new IllegalStateException("the program was packed without " + file));
    }

    /** The same; empty if the program was packed without it. */
    public static Optional<byte[]> ifThere(Class<?> room, String file) {
        try (InputStream in = room.getResourceAsStream(file)) {
            return in == null ? Optional.empty() : Optional.of(in.readAllBytes());
        } catch (IOException broken) {
            throw new UncheckedIOException(file + " cannot be read", broken);
        }
    }
}
