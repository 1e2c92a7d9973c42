package org.drillwright.wording;

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
        return PackedFile.text(room, file)
                .lines()
                .filter(line -> !line.isBlank() && !line.startsWith("#"))
                .toList();
    }
}
