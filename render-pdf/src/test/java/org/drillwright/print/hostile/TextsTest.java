package org.drillwright.print.hostile;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.drillwright.print.command.SchoolFiles;
import org.drillwright.print.command.Trial;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Bytes that are no text, texts of other systems, and tables that a spreadsheet would run. */
class TextsTest {

    @TempDir
    Path folder;

    static Stream<Arguments> bytes() {
        return Stream.of("drill.yaml", "school.yaml", "roster.yaml", "classes/tonight.yaml")
                .flatMap(file -> Stream.of(
                        Arguments.of(file, bytes(0xFF, 0xFE, 't', 0, ':', 0), "text in UTF-16"),
                        Arguments.of(file, bytes('t', ':', 0xFF), "not UTF-8 from here on"),
                        Arguments.of(file, bytes('t', ':', 0xED, 0xA0, 0x80), "not UTF-8 from here on"),
                        Arguments.of(file, bytes('t', ':', ' ', 'a', 0, 'b'), "U+0000, a control character")));
    }

    /** A table may have gone through a spreadsheet. */
    static Stream<Arguments> bytesOfTables() {
        return Stream.of(
                Arguments.of(bytes(0xFF, 0xFE, 't', 0, ':', 0), "it was read as UTF-16"),
                Arguments.of(bytes('t', ':', 0xFF), "it was read as Windows-1252"),
                Arguments.of(bytes('t', ':', 0xED, 0xA0, 0x80), "it was read as Windows-1252"),
                Arguments.of(bytes('t', ':', ' ', 'a', 0, 'b'), "This is a workbook"));
    }

    private static byte[] bytes(int... values) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        for (int value : values) {
            bytes.write(value);
        }
        return bytes.toByteArray();
    }

    @ParameterizedTest(name = "{0} {2}")
    @MethodSource("bytes")
    void what_is_no_text_is_said_to_be_none(String file, byte[] bytes, String said) throws Exception {
        School school = School.in(folder).with(file, bytes);
        assertTrue(school.saidOf(file).contains(said), school.saidOf(file));
    }

    @ParameterizedTest(name = "{1}")
    @MethodSource("bytesOfTables")
    void a_table_says_as_what_it_was_read(byte[] bytes, String said) throws Exception {
        School school = School.in(folder).with("roster.csv", bytes);
        Files.delete(folder.resolve("roster.yaml"));
        assertTrue(school.saidOf("roster.csv").contains(said), school.saidOf("roster.csv"));
    }

    @Test
    void a_record_in_another_encoding_is_read_but_nothing_is_added() throws Exception {
        byte[] before = "date,person,drill,event,with\n".getBytes(StandardCharsets.UTF_16);
        School school = School.in(folder).with("record.csv", before);
        Trial trial = school.run("record", "tonight", "--plan", "none");
        assertEquals(2, trial.code());
        assertTrue(
                trial.err()
                        .endsWith("Nothing was recorded: record.csv is UTF-16. Save it again as CSV UTF-8; its"
                                + " contents are kept.\n"),
                trial.err());
        assertArrayEquals(before, Files.readAllBytes(folder.resolve("record.csv")));
    }

    /** Classic Mac OS ended a line with a carriage return alone. */
    @Test
    void lines_that_end_with_a_carriage_return_alone_are_lines() {
        School school = School.in(folder)
                .with("straight.yaml", SchoolFiles.straight().replace("\n", "\r"))
                .with("record.csv", "date,person,drill,event,with\r2026-09-01,New0,riposte,signed off,\r");
        assertEquals(0, school.run("check").code(), school.run("check").out());
        Trial trial = school.run("progress", "--format", "csv");
        assertEquals("", trial.err());
        assertTrue(trial.out().contains("\nriposte,intermediate,known,known\n"), trial.out());
    }

    /**
     * A spreadsheet runs a cell that begins with one of these (OWASP, "CSV Injection"); an apostrophe before it keeps it
     * a text.
     */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "=1+1",
                "+1",
                "-1",
                "@SUM(A1)",
                "=cmd|' /C calc'!A0",
                "=HYPERLINK(\"http://x.example\")",
                "\uFF1D1"
            })
    void a_spreadsheet_runs_no_name(String name) {
        School school = School.in(folder)
                .with(
                        "roster.yaml",
                        "people:\n  - {name: '" + name.replace("'", "''") + "', knows: [straight]}\n  - {name: Bo}\n");
        for (List<String> command : List.of(
                List.of("progress", "--format", "csv"), List.of("record", "tonight", "--plan", "none", "--dry-run"))) {
            String table = school.run(command.toArray(String[]::new)).out();
            assertTrue(table.contains("'" + name.substring(0, 2)), table);
            assertTrue(
                    table.lines()
                            .flatMap(line -> Stream.of(line.split(",\"?|^\"?", -1)))
                            .noneMatch(cell -> cell.matches("[=+\\-@\t\uFF1D].*")),
                    table);
        }
    }

    /** YAML lets a text begin with a tab if it is quoted; the reader takes it away before any table is written. */
    @Test
    void a_tab_at_the_beginning_of_a_name_goes() {
        School school = School.in(folder).with("roster.yaml", "people:\n  - {name: \"\\t=1+1\"}\n  - {name: Bo}\n");
        assertTrue(school.run("progress", "--format", "csv").out().startsWith("drill,level,'=1+1,Bo\n"));
    }
}
