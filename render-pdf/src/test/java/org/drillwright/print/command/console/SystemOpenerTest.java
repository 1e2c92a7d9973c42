package org.drillwright.print.command.console;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How each system opens a thing; the names are those that Java gives the systems in {@code os.name}. */
class SystemOpenerTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Linux      | xdg-open                             | xdg-open",
                "FreeBSD    | xdg-open                             | xdg-open",
                "Mac OS X   | open                                 | open -t",
                "Windows 11 | rundll32 url.dll,FileProtocolHandler | notepad"
            })
    void each_system_has_its_way(String system, String opens, String edits) {
        SystemOpener opener = new SystemOpener(system, Map.of());
        assertEquals(opens + " http://127.0.0.1:1/", String.join(" ", opener.opening("http://127.0.0.1:1/")));
        assertEquals(edits + " x.yaml", String.join(" ", opener.editing(Path.of("x.yaml"))));
    }

    /** There xdg-open would take the terminal for a browser of text. */
    @Test
    void without_a_screen_nothing_is_started() {
        SystemOpener opener = new SystemOpener("Linux", Map.of("DISPLAY", ""));
        assertFalse(opener.open("http://127.0.0.1:1/"));
        assertFalse(opener.edit(Path.of("x.yaml")));
    }
}
