package org.drillwright.print.phone;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.condition.EnabledIf;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is copied into a shell is one word there, and is not run; the shell itself is the judge. */
class ShellWordTest {

    static boolean shell() {
        return Files.isExecutable(Path.of("/bin/sh"));
    }

    @ParameterizedTest
    @EnabledIf("shell")
    @ValueSource(
            strings = {
                "parry-of-quarte",
                "deuxième intention",
                "$(touch x)",
                "`touch x`",
                "a'b",
                "''",
                "a\"b",
                "-n",
                "--draft",
                "a;b",
                "a|b&c",
                "*",
                "~",
                "a\\b",
                "a\nb",
                "!x",
                "#x"
            })
    void theShellReadsItAsItWas(String word) throws IOException, InterruptedException {
        Process shell = new ProcessBuilder("/bin/sh", "-c", "printf '[%s]' " + ShellWord.of(word)).start();
        String read = new String(shell.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(0, shell.waitFor());
        assertEquals("[" + word + "]", read);
    }
}
