package org.drillwright.print.faults;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.drillwright.print.command.PlanFiles;
import org.drillwright.print.command.SchoolFiles;
import org.drillwright.print.command.Trial;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Runs that are killed (SIGKILL) while they write: each file is the old one or the new one, whole. */
class KilledTest {

    private static final String HEAD = "date,person,drill,event,with\n";

    /** How long the writing goes on at most before the kill, in milliseconds. */
    private static final int SPREAD = 500;

    @TempDir
    Path root;

    private final Random random = new Random(20260901);

    /** Four kinds of writing at once, so that two kills are eight. */
    @Test
    void twice() throws Exception {
        kill(2);
    }

    @Test
    @Tag("deep")
    void two_hundred_times() throws Exception {
        kill(200);
    }

    private void kill(int times) throws Exception {
        List<byte[]> cards = cards();
        String tidied = again("tidy", SchoolFiles.straight(), "tidy", "--write");
        String fixed = again(
                "fix", SchoolFiles.riposte().replace("    distance: extension\n", ""), "check", "--fix", "--write");
        int lines = 0;
        for (int time = 0; time < times; time++) {
            evenings("class");
            String before = record("class");
            Process busy = new ProcessBuilder(command("cards", "tidy", "fix", "class")).start();
            assertEquals('!', busy.getInputStream().read());
            Thread.sleep(random.nextInt(SPREAD));
            busy.destroyForcibly();
            assertTrue(busy.waitFor(30, TimeUnit.SECONDS));
            byte[] card = Files.readAllBytes(root.resolve("cards/cards.pdf"));
            assertTrue(cards.stream().anyMatch(whole -> java.util.Arrays.equals(whole, card)), "a torn card");
            assertOneOf(text("tidy/straight.yaml"), text("tidy/before"), tidied);
            assertOneOf(text("fix/straight.yaml"), text("fix/before"), fixed);
            String after = record("class");
            assertTrue(after.startsWith(before), "an earlier line was lost");
            lines += after.length() - before.length();
            assertTrue(isWhole(after), after);
            assertPartsAreNoDrills();
        }
        assertTrue(lines > 0, "nothing was ever written: the kills came too early");
    }

    /** Every line stands whole, and what is left to tell is told by the next run. */
    private boolean isWhole(String record) {
        return record.isEmpty() || (record.endsWith("\n") && record.startsWith(HEAD) && linesAreWhole(record));
    }

    private static boolean linesAreWhole(String record) {
        return record.lines()
                .skip(1)
                .allMatch(line -> line.matches("\\d{4}-\\d\\d-\\d\\d,(New|Old)\\d,(riposte)?,[a-z ]+,(Old0)?")
                        || line.matches("[-\\d]{10},,class\\d+,(batch \\w{8} 3|done \\w{8}),none"));
    }

    private void assertPartsAreNoDrills() {
        for (String kind : List.of("cards", "tidy", "fix", "class")) {
            String said = Trial.run(root.resolve(kind), "check").out();
            assertTrue(said.contains("3 drills: "), said);
            assertTrue(!said.contains(".part"), said);
        }
    }

    private static void assertOneOf(String text, String one, String other) {
        assertTrue(text.equals(one) || text.equals(other), text);
    }

    private List<String> command(String... kinds) {
        List<String> command = Started.java(List.of(), Started.testClassPath(), Busy.class);
        command.add(root.toString());
        command.addAll(List.of(kinds));
        return command;
    }

    private List<byte[]> cards() throws IOException {
        Path folder = root.resolve("cards");
        SchoolFiles.sound(folder);
        List<byte[]> cards = new ArrayList<>();
        for (String size : List.of("a6", "a7")) {
            assertEquals(
                    0,
                    Trial.run(folder, "cards", "straight", "--card", size, "--out", "cards.pdf")
                            .code());
            cards.add(Files.readAllBytes(folder.resolve("cards.pdf")));
        }
        return cards;
    }

    /** Prepares a file that a command writes anew each time, and says what it then is. */
    private String again(String kind, String before, String... command) throws IOException {
        Path folder = root.resolve(kind);
        SchoolFiles.sound(folder).with("before", before).with("straight.yaml", before);
        Trial.run(folder, command);
        String after = text(kind + "/straight.yaml");
        assertTrue(!after.equals(before), "the command changes nothing");
        return after;
    }

    /** A school with a class for each of many evenings, all still to be recorded. */
    private void evenings(String kind) throws IOException {
        Path folder = root.resolve(kind);
        if (Files.notExists(folder)) {
            PlanFiles files = PlanFiles.of(folder, 1, 1);
            IntStream.range(0, Busy.EVENINGS)
                    .forEach(at -> files.with(
                            "classes/" + kind + at + ".yaml",
                            "date: " + java.time.LocalDate.of(2025, 6, 2).plusDays(at)
                                    + "\nminutes: 90\ndrills: [riposte]\n"));
        }
        if (Files.exists(folder.resolve("record.csv")) && random.nextInt(4) == 0) {
            Files.move(folder.resolve("record.csv"), folder.resolve("old.csv"), StandardCopyOption.REPLACE_EXISTING);
        }
    }

    private String record(String kind) throws IOException {
        Path file = root.resolve(kind).resolve("record.csv");
        return Files.exists(file) ? Files.readString(file) : "";
    }

    private String text(String name) throws IOException {
        return Files.readString(root.resolve(name), StandardCharsets.UTF_8);
    }

    /** What a pulled plug may leave: half a line. It is told, ended, and told anew as a whole. */
    @Test
    void a_torn_last_line_is_told_and_the_next_run_tells_it_whole() throws IOException {
        String torn = HEAD + "2026-08-25,New0,,attended,\n2026-08-26,Ne";
        PlanFiles files = PlanFiles.of(root, 1, 1).with("record.csv", torn);
        Trial trial = Trial.run(root, "record", "tonight", "--plan", "none");
        assertEquals(0, trial.code());
        assertTrue(trial.err().contains("The last line has no line break: writing it was cut short."), trial.err());
        assertTrue(text("record.csv").startsWith(torn + "\n2026-08-26,,tonight,batch "), text("record.csv"));
        assertEquals(
                "The record already says all of this.\n",
                Trial.run(root, "record", "tonight", "--plan", "none").out());
        assertTrue(files.root().equals(root));
    }
}
