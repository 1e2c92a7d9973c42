package org.drillwright.print.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RosterCommandTest {

    @TempDir
    Path folder;

    @Test
    void what_was_done_under_the_old_name_stays() throws IOException {
        PlanFiles files = PlanFiles.of(folder, 1, 1);
        files.run("pairs", "tonight", "--keep");
        files.run("record", "tonight", "--signed-off", "New0", "riposte");
        assertEquals(
                "New0 is Pippa since 2026-08-27.\n",
                files.run("roster", "--rename", "new0", "Pippa", "--date", "2026-08-27")
                        .out());
        assertTrue(files.read("record.csv").endsWith("2026-08-27,New0,,renamed,Pippa\n"));
        assertTrue(files.read("roster.yaml").contains("{name: Pippa, was: [New0], knows: [straight]}"));
        assertEquals(
                "The record already says all of this.\n",
                files.run("record", "tonight").out());
        assertTrue(files.run("progress", "--format", "csv").out().contains("\nriposte,intermediate,known,known\n"));
        files.run("roster", "--rename", "Pippa", "Phil", "--date", "2026-08-28");
        assertEquals(
                "The record already says all of this.\n",
                files.run("record", "tonight").out());
    }

    @Test
    void who_left_is_planned_no_more_until_they_are_back() {
        PlanFiles files = PlanFiles.of(folder, 2, 2);
        files.run("roster", "--left", "New0", "--date", "2026-08-20");
        assertFalse(files.run("pairs", "tonight").out().contains("New0"));
        files.run("roster", "--back", "New0", "--date", "2026-08-21");
        assertTrue(files.run("pairs", "tonight").out().contains("New0"));
    }

    @Test
    void a_table_gets_the_new_name_and_keeps_all_else() throws IOException {
        PlanFiles files = PlanFiles.of(folder, 1, 1);
        Files.delete(folder.resolve("roster.yaml"));
        files.with(
                "roster.csv",
                "name;level;apart;was;ours\r\nAsh;beginner;Bo;;Ash tree\r\n\"Bo\";;Ash/Cy;;\r\nCy;;;;\r\n");
        assertEquals(0, files.run("roster", "--rename", "Ash", "Ashley").code());
        assertEquals(
                "name;level;apart;was;ours\r\nAshley;beginner;Bo;Ash;Ash tree\r\n\"Bo\";;Ashley/Cy;;\r\nCy;;;;\r\n",
                files.read("roster.csv"));
        assertTrue(files.read("record.csv").endsWith(",Ash,,renamed,Ashley\n"));
    }

    @Test
    void of_a_name_in_two_cells_the_one_that_is_another_is_changed() throws IOException {
        PlanFiles files = PlanFiles.of(folder, 1, 1);
        Files.delete(folder.resolve("roster.yaml"));
        files.with("roster.csv", "Nachname,Vorname\nFenwick,Ash\nAsh,Bo\n");
        assertEquals(
                0, files.run("roster", "--rename", "Ash Fenwick", "Ash Rowe").code());
        assertEquals("Nachname,Vorname\nRowe,Ash\nAsh,Bo\n", files.read("roster.csv"));
        Trial refused = files.run("roster", "--rename", "Bo Ash", "Kit Lark");
        assertEquals(2, refused.code());
        assertTrue(refused.err().contains("The new name could not be written into roster.csv."), refused.err());
        assertEquals("Nachname,Vorname\nRowe,Ash\nAsh,Bo\n", files.read("roster.csv"));
    }

    @Test
    void a_table_in_another_encoding_is_left() throws IOException {
        PlanFiles files = PlanFiles.of(folder, 1, 1);
        Files.delete(folder.resolve("roster.yaml"));
        Files.write(folder.resolve("roster.csv"), "name\nAsh\nZo\u00eb\n".getBytes(StandardCharsets.ISO_8859_1));
        Trial refused = files.run("roster", "--rename", "Ash", "Ashley");
        assertEquals(2, refused.code());
        assertTrue(refused.err().contains("roster.csv isn't UTF-8, and was left as it is."), refused.err());
        assertFalse(Files.exists(folder.resolve("record.csv")));
    }
}
