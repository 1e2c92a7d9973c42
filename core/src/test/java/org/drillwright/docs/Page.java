package org.drillwright.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Compares a page of {@code docs/} with what the program makes of it now; {@code -Dupdate} writes it anew. */
final class Page {

    private static final Path DOCS = Path.of("docs");

    private Page() {}

    static void compare(String name, String made) throws IOException {
        Path page = DOCS.resolve(name);
        if (System.getProperty("update") != null) {
            Files.createDirectories(DOCS);
            Files.writeString(page, made);
        }
        String stored = Files.exists(page) ? Files.readString(page) : "";
        assertEquals(stored, made, name + " is stale: run the tests of core with -Dupdate and read what changed");
    }

    /** The same for a part of a page that stands between two marks. */
    static void compareBetween(Path page, String mark, String made) throws IOException {
        String stored = Files.readString(page);
        int from = stored.indexOf(mark) + mark.length() + 1;
        int to = stored.indexOf(mark, from);
        if (System.getProperty("update") != null) {
            stored = stored.substring(0, from) + made + stored.substring(to);
            Files.writeString(page, stored);
            to = stored.indexOf(mark, from);
        }
        assertEquals(stored.substring(from, to), made, page + " is stale: run the tests of core with -Dupdate");
    }
}
