package org.drillwright.print.command.watch;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How each system opens a page; the names are those that Java gives the systems in {@code os.name}. */
class BrowserCommandTest {

    @ParameterizedTest
    @CsvSource({"Linux, xdg-open", "FreeBSD, xdg-open", "Mac OS X, open", "Windows 11, rundll32"})
    void eachSystemHasItsWay(String system, String program) {
        assertEquals(program, Browser.command(system, "http://127.0.0.1:1/").get(0));
    }
}
