package org.drillwright.print.command.install;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What bash itself offers when the script is loaded and the tabulator is pressed. */
class ShellCompletionTest {

    /** Completes the last of its arguments, as bash calls a completion function (bash(1), Programmable Completion). */
    private static final String PRESS_TAB = """
            compopt() { :; }
            source "$1"; shift
            COMP_WORDS=("$@"); COMP_CWORD=$(($# - 1)); COMP_LINE="$*"; COMP_POINT=${#COMP_LINE}
            _complete_drillwright "$1" "${COMP_WORDS[COMP_CWORD]}"
            printf '%s\\n' "${COMPREPLY[@]}"
            """;

    private static final Path BASH = Path.of("/bin/bash");

    @TempDir
    static Path folder;

    @BeforeAll
    static void bashIsHere() throws IOException {
        assumeTrue(Files.isExecutable(BASH), "no bash on this machine");
        WriteManual.write(folder, "2026-09-01");
    }

    private static Set<String> offered(String... words) throws IOException, InterruptedException {
        return offeredBy("drillwright", words);
    }

    private static Set<String> offeredBy(String program, String... words) throws IOException, InterruptedException {
        String[] command = new String[words.length + 6];
        System.arraycopy(
                new String[] {
                    BASH.toString(),
                    "-c",
                    PRESS_TAB,
                    "bash",
                    folder.resolve("completion/drillwright").toString(),
                    program
                },
                0,
                command,
                0,
                6);
        System.arraycopy(words, 0, command, 6, words.length);
        Process bash = new ProcessBuilder(command).redirectErrorStream(true).start();
        String reply = new String(bash.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertTrue(bash.waitFor(30, TimeUnit.SECONDS));
        return new TreeSet<>(reply.lines().filter(line -> !line.isBlank()).toList());
    }

    @Test
    void a_begun_command_is_completed() throws Exception {
        assertEquals(Set.of("check"), offered("ch"));
        assertTrue(offered("").containsAll(Set.of("check", "cards", "pairs", "identify")));
    }

    @Test
    void a_begun_option_is_completed() throws Exception {
        assertEquals(Set.of("--strict"), offered("check", "--str"));
    }

    @Test
    void an_options_words_are_those_that_it_takes() throws Exception {
        assertEquals(Set.of("text", "line", "json", "sarif"), offered("check", "--format", ""));
        assertEquals(
                Set.of("a7", "a6", "a5", "3x5", "4x6", "5x8", "quarter-letter", "half-letter", "wall-a4", "wall-a3"),
                offered("cards", "--card", ""));
        assertEquals(Set.of("a4", "a3", "letter", "legal", "card"), offered("cards", "--sheet", ""));
        assertEquals(Set.of("none", "pouch", "sheet"), offered("cards", "--laminate", ""));
    }

    /** The program itself tells the names; here a script stands for it, which says what it was asked. */
    @Test
    void names_of_the_school_are_asked_for() throws Exception {
        Path program = folder.resolve("program");
        Files.writeString(program, "#!/bin/sh\nprintf '%s\\n' \"$*\" \"$1-$2\" \"other\"\n");
        assertTrue(program.toFile().setExecutable(true));
        String asked = program.toString();
        assertEquals(Set.of("names\\ drills", "names-drills", "other"), offeredBy(asked, "explain", ""));
        assertEquals(Set.of("names-drills"), offeredBy(asked, "check", "--strict", "names-"));
        assertEquals(Set.of("names-sets"), offeredBy(asked, "cards", "--set", "names-"));
        assertEquals(Set.of("names-sets"), offeredBy(asked, "cards", "--set", "=", "names-"));
        assertEquals(Set.of("names-classes"), offeredBy(asked, "pairs", "names-"));
        assertEquals(Set.of("names-people"), offeredBy(asked, "pairs", "tonight", "--without", "names-"));
        assertEquals(Set.of("names-terms"), offeredBy(asked, "term", "names-"));
        assertEquals(
                Set.of("names\\ drills\\ --school=there"),
                offeredBy(asked, "--school", "=", "there", "explain", "names\\ "));
    }

    @Test
    void a_commands_word_is_offered() throws Exception {
        assertEquals(Set.of("class", "drill", "roster", "school", "term"), offered("schema", ""));
    }
}
