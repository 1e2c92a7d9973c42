package org.drillwright.print.faults;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.drillwright.print.command.PlanFiles;
import org.drillwright.print.command.SchoolFiles;
import org.drillwright.print.command.Trial;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What is printed is the same, byte for byte, in every locale: the Turkish i without a dot, the figures of Egypt, the
 * decimal comma of Germany, the Buddhist calendar of Thailand, the imperial one of Japan (Unicode CLDR names them all).
 */
class LocalesTest {

    private static final List<String> COMMANDS = List.of(
            "check --format json",
            "check --format line",
            "cards riposte straight --back pictures --out cards.pdf",
            "booklet --draft --out booklet.pdf",
            "pairs tonight",
            "pairs tonight --format json",
            "pairs tonight --out pairs.pdf",
            "lesson tonight",
            "lesson tonight --format json",
            "hall tonight",
            "progress",
            "progress --format csv",
            "partners",
            "attendance",
            "attendance --format csv",
            "term autumn --why",
            "term autumn --format json --date 2026-09-01",
            "explain riposte",
            "explain riposte --format json",
            "coverage --format json",
            "school",
            "schema",
            "tidy",
            "check --fix",
            "words",
            "new Illi İIıi Iot",
            "record tonight --plan none --dry-run");

    @TempDir
    Path temporary;

    private Path folder;

    @BeforeEach
    void school() {
        folder = temporary.resolve("school");
        PlanFiles.of(folder, 3, 3)
                .with("record.csv", "date,person,drill,event,with\n2026-09-01,New0,riposte,signed off,\n")
                .with("terms/autumn.yaml", """
                        begins: 19:00
                        dates: [{key: a, date: 2026-09-02}, {key: b, date: 2026-09-09}]
                        groups: [{name: all, drills: [straight, riposte]}]
                        """)
                .with(
                        "x-mendable.yaml",
                        SchoolFiles.riposte()
                                .replace("straight riposte", "riposte")
                                .replace("    distance: extension\n", ""));
    }

    /** Runs all of them in one process and prints what they say. */
    static final class All {

        private All() {}

        public static void main(String[] folder) {
            StringBuilder all = new StringBuilder();
            for (String command : COMMANDS) {
                Trial trial = Trial.run(Path.of(folder[0]), command.split(" "));
                all.append(command)
                        .append('\n')
                        .append(trial.code())
                        .append(trial.out())
                        .append(trial.err());
            }
            PrintStream out = new PrintStream(
                    new java.io.FileOutputStream(java.io.FileDescriptor.out), false, StandardCharsets.UTF_8);
            out.print(all);
            out.flush();
        }
    }

    private record Said(String words, String cards, String booklet, String pairs) {}

    private Said said(String... options) throws Exception {
        List<String> command = Started.java(List.of(options), Started.testClassPath(), All.class);
        command.add(folder.toString());
        Path out = temporary.resolve("out");
        ProcessBuilder builder = new ProcessBuilder(command);
        builder.environment().put("LC_ALL", "C.UTF-8");
        Process process = builder.redirectOutput(out.toFile())
                .redirectError(temporary.resolve("err").toFile())
                .start();
        assertTrue(process.waitFor(120, TimeUnit.SECONDS));
        assertEquals("", Files.readString(temporary.resolve("err")));
        forgetWhatWasMade();
        return new Said(Files.readString(out), bytes("cards.pdf"), bytes("booklet.pdf"), bytes("pairs.pdf"));
    }

    /** The drill that was begun, and the plan that was kept: the next run is the first again. */
    private void forgetWhatWasMade() throws IOException {
        try (var files = Files.walk(folder)) {
            for (Path made : files.filter(
                            file -> String.valueOf(file.getFileName()).startsWith("ill")
                                    || folder.relativize(file).startsWith(Path.of("classes", "plans")))
                    .filter(Files::isRegularFile)
                    .toList()) {
                Files.delete(made);
            }
        }
    }

    private String bytes(String name) throws Exception {
        return Files.readString(folder.resolve(name), StandardCharsets.ISO_8859_1);
    }

    /** The dotless i of Turkish, written with the figures of Egypt. */
    @Test
    void another_locale_prints_the_same_bytes() throws Exception {
        assertSame(List.of(List.of("tr", "TR", "nu-arab", "ISO-8859-1")));
    }

    /** Lines from the right, commas in numbers, two calendars of their own, and an encoding without accents. */
    @Test
    @Tag("deep")
    void more_locales_print_the_same_bytes() throws Exception {
        assertSame(List.of(
                List.of("ar", "EG", "nu-arab", "UTF-8"),
                List.of("de", "DE", "", "ISO-8859-1"),
                List.of("th", "TH", "ca-buddhist-nu-thai", "US-ASCII"),
                List.of("ja", "JP", "ca-japanese", "UTF-8")));
    }

    private void assertSame(List<List<String>> locales) throws Exception {
        Said english = said("-Duser.language=en", "-Duser.country=GB");
        assertTrue(english.words().contains("Parry of quarte, straight riposte (riposte)"), english.words());
        for (List<String> locale : locales) {
            Said other = said(
                    "-Duser.language=" + locale.get(0),
                    "-Duser.country=" + locale.get(1),
                    "-Duser.extensions=" + (locale.get(2).isEmpty() ? "" : "u-" + locale.get(2)),
                    "-Dfile.encoding=" + locale.get(3),
                    "-Duser.timezone=Pacific/Kiritimati");
            assertEquals(english.words(), other.words(), locale.toString());
            assertTrue(english.cards().equals(other.cards()), "cards in " + locale);
            assertTrue(english.booklet().equals(other.booklet()), "booklet in " + locale);
            assertTrue(english.pairs().equals(other.pairs()), "pairs in " + locale);
        }
    }
}
