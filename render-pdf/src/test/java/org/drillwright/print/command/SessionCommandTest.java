package org.drillwright.print.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SessionCommandTest {

    @TempDir
    Path folder;

    /** Two drills that both know: each leads first in one; an odd number would begin with the other next time. */
    @Test
    void what_the_two_tell_is_added_and_partners_say_it() throws IOException {
        PlanFiles files = PlanFiles.of(folder, 0, 2);
        assertEquals(
                "record.csv: 1 line added.\n",
                files.run("session", "Old0", "Old1", "--tell", "kept", "--date", "2026-01-09")
                        .out());
        assertEquals(
                "The record already says this.\n",
                files.run("session", "Old0", "Old1", "--tell", "kept", "--date", "2026-01-09")
                        .out());
        assertTrue(files.read("record.csv").endsWith("2026-01-09,Old0,,kept,Old1\n"));
        assertTrue(
                files.run("partners", "Old0").out().replaceAll("\\s+", " ").contains("kept 1 of the last 1 together"));
        assertTrue(files.run("partners").out().contains("Old1"));
        files.run("session", "Old1", "Old0", "--tell", "did not come", "--date", "2026-01-09");
        assertTrue(files.run("session", "Old0", "Old1")
                .out()
                .contains("Old0 and Old1 remember 9 January differently; ask them."));
    }

    @Test
    void who_led_first_less_often_begins() {
        PlanFiles files = PlanFiles.of(folder, 0, 2)
                .with("record.csv", "date,person,drill,event,with\n2026-01-09,Old0,riposte,led first,Old1\n");
        String session = files.run("session", "Old0", "Old1").out();
        assertTrue(
                session.indexOf("Old1 leads first") < session.indexOf("Old0 leads first")
                        || !session.contains("Old0 leads first"),
                session);
        assertTrue(session.contains("Old1 leads first"), session);
    }

    @Test
    void another_word_is_refused() {
        Trial trial = PlanFiles.of(folder, 0, 2).run("session", "Old0", "Old1", "--tell", "never");
        assertEquals(2, trial.code());
        assertTrue(trial.err().contains("--tell needs one of: agreed, kept, came late, did not come, called off."));
    }
}
