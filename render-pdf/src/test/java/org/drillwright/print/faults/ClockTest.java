package org.drillwright.print.faults;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.List;
import org.drillwright.print.command.SchoolFiles;
import org.drillwright.print.command.Trial;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The machine's clock is wrong, or was: nothing depends on it but the day that is written down. */
class ClockTest {

    private static final String[] CHANGED = {"cards", "--changed", "--set", "thrusts"};

    @TempDir
    Path folder;

    @BeforeEach
    void school() {
        SchoolFiles.sound(folder);
    }

    private List<String> prints() throws IOException {
        return Files.readAllLines(folder.resolve("prints.csv"));
    }

    /** A battery that died, a clock before the epoch, and years that need more than four figures. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "1970-01-01T00:00:00Z",
                "1901-12-13T20:45:52Z",
                "2038-01-19T03:14:08Z",
                "9999-12-31T23:59:59Z",
                "+12026-09-01T12:00:00Z",
                "-0044-03-15T12:00:00Z"
            })
    void cards_are_printed_once_whatever_day_the_clock_shows(String moment) throws IOException {
        Trial first = Trial.at(moment, folder, CHANGED);
        assertEquals(0, first.code(), first.err());
        assertEquals(3, prints().size());
        assertEquals(moment.substring(0, moment.indexOf('T')), prints().get(1).split(",")[0]);
        Trial again = Trial.at(moment, folder, CHANGED);
        assertTrue(again.out().startsWith("Nothing to print"), again.out() + again.err());
    }

    @Test
    void what_changed_since_is_printed_even_if_the_clock_was_set_back() throws IOException {
        Trial.at("2031-05-01T12:00:00Z", folder, CHANGED);
        new SchoolFiles(folder).with("riposte.yaml", SchoolFiles.riposte().replace("Arrive softly", "Arrive gently"));
        Trial again = Trial.at("2026-09-01T12:00:00Z", folder, CHANGED);
        assertTrue(again.out().startsWith("cards.pdf: 1 card of size a6"), again.out() + again.err());
        assertTrue(again.out().contains("printed on 2031-05-01"), again.out());
        assertTrue(Trial.run(folder, CHANGED).out().startsWith("Nothing to print"));
        assertEquals(4, prints().size());
    }

    @Test
    void which_card_is_current_is_told_by_what_it_says_and_not_by_its_day() throws IOException {
        Trial.at("2031-05-01T12:00:00Z", folder, CHANGED);
        String old = prints().get(1).split(",")[1];
        new SchoolFiles(folder).with("riposte.yaml", SchoolFiles.riposte().replace("Arrive softly", "Arrive gently"));
        Trial.at("2026-09-01T12:00:00Z", folder, CHANGED);
        String fresh = prints().get(3).split(",")[1];
        Trial older = Trial.run(folder, "identify", old);
        Trial current = Trial.run(folder, "identify", fresh);
        assertTrue(older.out().contains("older version, printed on 2031-05-01"), older.out());
        assertTrue(current.out().contains("this card is current. Printed on 2026-09-01"), current.out());
    }

    @Test
    void files_of_tomorrow_and_of_long_ago_are_judged_as_any_others() throws IOException {
        Trial before = Trial.run(folder, "check");
        Files.setLastModifiedTime(folder.resolve("riposte.yaml"), FileTime.from(Instant.parse("2107-12-31T23:59:58Z")));
        Files.setLastModifiedTime(
                folder.resolve("straight.yaml"), FileTime.from(Instant.parse("1970-01-01T00:00:00Z")));
        assertEquals(before, Trial.run(folder, "check"));
    }
}
