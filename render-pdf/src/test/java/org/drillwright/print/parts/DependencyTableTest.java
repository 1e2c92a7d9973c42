package org.drillwright.print.parts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The tables of dependencies in DEVELOPERS.md are those of the poms. */
class DependencyTableTest {

    private static final Path ROOT = Path.of("..");

    /** A row: {@code | `artifact` version | why | licence | bytes | last release |}. */
    private static final Pattern ROW =
            Pattern.compile("(?m)^\\| `([^`]+)` (\\S+) \\|([^|]+)\\|([^|]+)\\| ([0-9,]+) \\|([^|]+)\\|$");

    private record Row(String why, String licence, long bytes, String release) {}

    @Test
    void what_is_packed_is_in_the_first_table() throws IOException {
        Map<String, Long> expected = new TreeMap<>();
        for (Part part : Bill.parts()) {
            if (!part.isOurs()) {
                expected.put(part.toString(), Files.size(part.archive()));
            }
        }
        Map<String, Long> found = rows("Packed with the program").entrySet().stream()
                .collect(Collectors.toMap(
                        Map.Entry::getKey, row -> row.getValue().bytes(), (a, b) -> a, TreeMap::new));
        assertEquals(expected, found);
    }

    @Test
    void what_is_only_for_tests_and_benches_is_in_the_second() throws IOException {
        Map<String, String> expected = new TreeMap<>(managed());
        for (Part part : Bill.parts()) {
            expected.remove(part.name());
        }
        expected.keySet().removeIf(name -> name.startsWith("drillwright-"));
        Map<String, String> found = new TreeMap<>();
        for (String row : rows("For tests and benches").keySet()) {
            found.put(row.split(" ")[0], row.split(" ")[1]);
        }
        assertEquals(expected, found);
    }

    @Test
    void every_row_says_why_and_under_which_licence_and_how_it_is_kept() throws IOException {
        for (String table : List.of("Packed with the program", "For tests and benches")) {
            rows(table).forEach((name, row) -> {
                assertFalse(row.why().isBlank(), name);
                assertFalse(row.licence().isBlank(), name);
                assertTrue(row.release().matches(" (20[0-9]{2}-[0-9]{2}-[0-9]{2}|no date); .+ "), name + row.release());
            });
        }
    }

    private static Map<String, Row> rows(String heading) throws IOException {
        String page = Files.readString(ROOT.resolve("DEVELOPERS.md"));
        int start = page.indexOf("### " + heading + "\n");
        assertTrue(start >= 0, heading);
        int end = page.indexOf("\n#", start + 1);
        Map<String, Row> rows = new LinkedHashMap<>();
        Matcher row = ROW.matcher(page.substring(start, end));
        while (row.find()) {
            long bytes = Long.parseLong(row.group(5).replace(",", ""));
            rows.put(row.group(1) + " " + row.group(2), new Row(row.group(3), row.group(4), bytes, row.group(6)));
        }
        assertFalse(rows.isEmpty(), heading);
        return rows;
    }

    /** Artifacts and versions that the poms name, with their properties filled in; plugins are not among them. */
    private static Map<String, String> managed() throws IOException {
        String parent = Files.readString(ROOT.resolve("pom.xml"));
        List<String> poms = new ArrayList<>(List.of(parent));
        poms.add(Files.readString(Path.of("pom.xml")));
        poms.add(Files.readString(ROOT.resolve("core/pom.xml")));
        Map<String, String> managed = new TreeMap<>();
        for (String pom : poms) {
            Matcher named = Pattern.compile(
                            "<(?:dependency|path)>[^/]*?<groupId>[^<]+</groupId>\\s*<artifactId>([^<]+)</artifactId>\\s*"
                                    + "<version>\\$\\{([^}]+)\\}</version>")
                    .matcher(pom);
            while (named.find()) {
                if (!named.group(2).equals("project.version")) {
                    managed.put(named.group(1), property(parent, named.group(2)));
                }
            }
        }
        managed.put("palantir-java-format", property(parent, "palantir-java-format.version"));
        return managed;
    }

    private static String property(String pom, String name) {
        Matcher property =
                Pattern.compile("<" + Pattern.quote(name) + ">([^<]+)</").matcher(pom);
        assertTrue(property.find(), name);
        return property.group(1);
    }
}
