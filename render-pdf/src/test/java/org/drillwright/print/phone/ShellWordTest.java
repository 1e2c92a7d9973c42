package org.drillwright.print.phone;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.condition.EnabledIf;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is copied into a shell is one word there, and is not run; the shell itself is the judge. */
class ShellWordTest {

    @ParameterizedTest
    @EnabledIf("org.drillwright.print.phone.Shell#isThere")
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
    void the_shell_reads_it_as_it_was(String word) {
        assertEquals(List.of(word), Shell.words(ShellWord.of(word)));
    }
}
