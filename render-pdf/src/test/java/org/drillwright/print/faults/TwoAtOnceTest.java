package org.drillwright.print.faults;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.drillwright.print.command.PlanFiles;
import org.drillwright.print.command.SchoolFiles;
import org.drillwright.print.command.Trial;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.print.command.write.WholeFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two runs at once, each a process of its own. */
class TwoAtOnceTest {

    private static final int EVENINGS = 10;

    @TempDir
    Path root;

    /** Runs a command in several processes that begin together, and sees each end. */
    private void together(Path folder, List<List<String>> commands) throws IOException, InterruptedException {
        List<Process> running = new ArrayList<>();
        for (List<String> command : commands) {
            List<String> all = Started.java(List.of(), Started.testClassPath(), Row.class);
            all.addAll(command);
            running.add(new ProcessBuilder(all)
                    .directory(folder.toFile())
                    .inheritIO()
                    .start());
        }
        for (Process process : running) {
            assertTrue(process.waitFor(60, TimeUnit.SECONDS));
            assertEquals(0, process.exitValue());
        }
    }

    /** Runs one command after another, each line of its arguments one; ends with the worst exit code. */
    static final class Row {

        private Row() {}

        public static void main(String[] lines) {
            int worst = 0;
            for (String line : lines) {
                worst = Math.max(
                        worst,
                        Trial.run(Path.of("").toAbsolutePath(), line.split(" ")).code());
            }
            Runtime.getRuntime().halt(worst);
        }
    }

    @Test
    void two_who_record_lose_no_line_and_mix_none() throws Exception {
        PlanFiles files = PlanFiles.of(root, 2, 2);
        for (String who : List.of("first", "second")) {
            for (int at = 0; at < EVENINGS; at++) {
                files.with(
                        "classes/" + who + at + ".yaml",
                        "date: 2026-" + (who.equals("first") ? "06" : "07") + "-" + (at + 1 < 10 ? "0" : "") + (at + 1)
                                + "\nminutes: 90\ndrills: [riposte]\n");
            }
        }
        together(root, List.of(records("first"), records("second"), records("first")));
        List<String> lines = Files.readAllLines(root.resolve("record.csv"));
        assertEquals("date,person,drill,event,with", lines.get(0));
        assertEquals(lines.size(), new HashSet<>(lines).size(), "a line stands twice");
        assertTrue(lines.stream().allMatch(line -> line.split(",", -1).length == 5), "a line is mixed");
        // Each evening four are there, and each of the two who are new works once with each of the two who know: 4 + 4;
        // and a line before them and one behind.
        assertEquals(1 + 2 * EVENINGS * 10, lines.size());
    }

    private static List<String> records(String who) {
        return IntStream.range(0, EVENINGS)
                .mapToObj(at -> "record " + who + at + " --plan none")
                .toList();
    }

    @Test
    void two_who_print_to_one_place_leave_the_cards_of_one() throws Exception {
        SchoolFiles.sound(root);
        List<byte[]> whole = new ArrayList<>();
        for (String size : List.of("a6", "a7")) {
            Trial.run(root, "cards", "--card", size, "--out", size + ".pdf");
            whole.add(Files.readAllBytes(root.resolve(size + ".pdf")));
        }
        together(
                root,
                List.of(
                        IntStream.range(0, 5)
                                .mapToObj(at -> "cards --card a6 --out cards.pdf")
                                .toList(),
                        IntStream.range(0, 5)
                                .mapToObj(at -> "cards --card a7 --out cards.pdf")
                                .toList()));
        byte[] left = Files.readAllBytes(root.resolve("cards.pdf"));
        assertArrayEquals(left.length == whole.get(0).length ? whole.get(0) : whole.get(1), left);
        try (var files = Files.list(root)) {
            assertTrue(files.noneMatch(file -> file.toString().endsWith(".part")));
        }
    }

    /** Whoever is late is told, and writes nothing over what the other wrote. */
    @Test
    void a_drill_that_changed_since_it_was_read_is_left_as_it_is() throws IOException {
        SchoolFiles.sound(root);
        Path drill = root.resolve("straight.yaml");
        byte[] before = Files.readAllBytes(drill);
        Files.writeString(drill, "title: saved meanwhile\n");
        var refused = org.junit.jupiter.api.Assertions.assertThrows(
                CannotRun.class, () -> new WholeFile(drill).replace(before, "title: tidied\n"));
        assertTrue(String.valueOf(refused.getMessage()).contains("was changed by another program just now"));
        assertEquals("title: saved meanwhile\n", Files.readString(drill));
    }

    @Test
    void tidy_and_fix_at_once_leave_a_whole_drill() throws Exception {
        String before = SchoolFiles.riposte().replace("    distance: extension\n", "");
        SchoolFiles.sound(root).with("riposte.yaml", before);
        Trial.run(root, "check", "--fix", "--write", "riposte");
        String fixed = Files.readString(root.resolve("riposte.yaml"));
        new SchoolFiles(root).with("riposte.yaml", before);
        Process one = start("tidy --write");
        Process two = start("check --fix --write");
        assertTrue(one.waitFor(60, TimeUnit.SECONDS) && two.waitFor(60, TimeUnit.SECONDS));
        String after = Files.readString(root.resolve("riposte.yaml"));
        assertTrue(after.startsWith("title: Parry of quarte") && after.endsWith("Masks off. Salute.\n"), after);
        assertTrue(
                after.equals(before)
                        || after.lines().filter(line -> !line.isBlank()).count()
                                >= before.lines().count(),
                after);
        assertTrue(after.length() <= fixed.length() + 50);
    }

    private Process start(String line) throws IOException {
        List<String> all = Started.java(List.of(), Started.testClassPath(), Row.class);
        all.add(line);
        return new ProcessBuilder(all).directory(root.toFile()).start();
    }
}
