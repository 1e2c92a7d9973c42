package org.drillwright.wording;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** A file of data that the program is packed with, line by line. */
public final class DataLines {

    private DataLines() {}

    /**
     * Its lines, in their order, without blank ones and remarks, which begin with {@code #}.
     *
     * @param room a class that it lies beside
     * @throws IllegalStateException if the program was packed without it
     */
    public static List<String> of(Class<?> room, String file) {
        try (InputStream in = room.getResourceAsStream(file)) {
            if (in == null) {
                throw new IllegalStateException("the program was packed without " + file);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.isBlank() && !line.startsWith("#"))
                    .toList();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
