package org.drillwright.print.command.console;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import org.junit.jupiter.api.Test;

class StandardStreamsTest {

    @Test
    void colour_is_for_terminals_that_know_it_and_owners_who_want_it() {
        assertEquals(true, StandardStreams.allowsColour(Map.of("TERM", "xterm"), "Linux"));
        assertEquals(false, StandardStreams.allowsColour(Map.of("TERM", "xterm", "NO_COLOR", "1"), "Linux"));
        assertEquals(true, StandardStreams.allowsColour(Map.of("TERM", "xterm", "NO_COLOR", ""), "Linux"));
        assertEquals(false, StandardStreams.allowsColour(Map.of("TERM", "dumb"), "Linux"));
        assertEquals(false, StandardStreams.allowsColour(Map.of(), "Linux"));
        assertEquals(false, StandardStreams.allowsColour(Map.of(), "Windows 11"));
        assertEquals(true, StandardStreams.allowsColour(Map.of("WT_SESSION", "x"), "Windows 11"));
    }
}
