package org.drillwright.print.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FixTest {

    private static final String WITHOUT = SchoolFiles.riposte().replace("    distance: extension\n", "# mine\n");

    private static final String DIFFERENCE = """
            --- riposte.yaml
            +++ riposte.yaml
            @@ -12,6 +12,7 @@
                 safety: Arrive softly and let the blade bend.
               - leader: Hold the lunge and take the touch.
                 follower: Riposte straight to the high inside line.
            +    distance: extension
             # mine
                 safety: Stop the point on the jacket.
               - leader: Recover on guard in sixte.

            """;

    @TempDir
    Path folder;

    @BeforeEach
    void school() {
        SchoolFiles.sound(folder).with("riposte.yaml", WITHOUT);
    }

    private String file() throws IOException {
        return Files.readString(folder.resolve("riposte.yaml"));
    }

    @Test
    void a_pipe_only_shows() throws IOException {
        Trial trial = Trial.run(folder, "check", "--fix");
        assertEquals(1, trial.code());
        assertTrue(
                trial.out()
                        .startsWith(
                                DIFFERENCE + "Nothing was written; use --write for" + " that.\n\nriposte.yaml, line "),
                trial.out());
        assertEquals(WITHOUT, file());
    }

    @Test
    void writes_when_told_and_checks_anew() throws IOException {
        Trial trial = Trial.run(folder, "check", "--fix", "--write");
        assertEquals(
                new Trial(
                        0,
                        DIFFERENCE
                                + "Written: 1 file.\n\n3 drills: no errors, no warnings, no notes.\n7 counts:"
                                + " all judged.\n",
                        ""),
                trial);
        assertEquals(WITHOUT.replace("# mine", "    distance: extension\n# mine"), file());
    }

    @Test
    void asks_a_person() throws IOException {
        Trial no = Trial.talk(folder, "no\n", "check", "--fix");
        assertTrue(no.out().contains("Write this into 1 file? (yes or no) Nothing was written"), no.out());
        assertEquals(WITHOUT, file());
        assertEquals(0, Trial.talk(folder, "yes\n", "check", "--fix").code());
        assertTrue(file().contains("distance: extension\n# mine"));
    }

    @Test
    void an_invisible_mark_stays() throws IOException {
        new SchoolFiles(folder).with("riposte.yaml", "\ufeff" + WITHOUT);
        assertEquals(0, Trial.run(folder, "check", "--fix", "--write").code());
        assertTrue(file().startsWith("\ufefftitle: "));
    }

    @Test
    void says_so_when_there_is_nothing() {
        SchoolFiles.sound(folder);
        Trial trial = Trial.run(folder, "check", "--fix", "--write");
        assertTrue(trial.out().startsWith("Nothing here can be corrected automatically"), trial.out());
        assertEquals(2, Trial.run(folder, "check", "--write").code());
        assertEquals(2, Trial.run(folder, "check", "--fix", "--format", "sarif").code());
    }
}
