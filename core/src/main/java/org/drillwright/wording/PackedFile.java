package org.drillwright.wording;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

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
        try (InputStream in = room.getResourceAsStream(file)) {
            if (in == null) {
                throw new IllegalStateException("the program was packed without " + file);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException broken) {
            throw new UncheckedIOException(file + " cannot be read", broken);
        }
    }
}
