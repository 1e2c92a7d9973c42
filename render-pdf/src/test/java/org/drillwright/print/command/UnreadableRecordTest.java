package org.drillwright.print.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What rests on the record is not told without it, as if nobody had ever done anything. */
class UnreadableRecordTest {

    private static final String NO_RECORD = "who;what\nOld0;riposte\n";

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "progress",
                "progress --format csv",
                "progress --out p.pdf",
                "attendance",
                "partners",
                "session Old0 Old1",
                "session Old0 Old1 --tell kept",
                "pairs tonight",
                "lesson tonight",
                "record tonight",
                "roster --left Old1"
            })
    void ends_as_a_failure_and_touches_nothing(String command) throws IOException {
        PlanFiles files = PlanFiles.of(folder, 1, 2).with("record.csv", NO_RECORD);
        Trial trial = files.run(command.split(" "));
        assertEquals(1, trial.code(), trial.out() + trial.err());
        assertEquals("", trial.out());
        assertTrue(
                trial.err()
                        .endsWith("Nothing was done, because record.csv could not be read:"
                                + " correct it first, or rename it to begin without it.\n"),
                trial.err());
        assertEquals(NO_RECORD, files.read("record.csv"));
    }
}
