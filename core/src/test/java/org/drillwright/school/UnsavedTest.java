package org.drillwright.school;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A text that is not saved counts as if it were: what comes of it is what saving it and opening the folder gives. */
class UnsavedTest {

    private static final String DRILL = """
            title: Steps
            level: beginner
            form: solo
            weapon: none
            gear: [glove]
            start: On guard, out of distance.
            opening: Salute. On guard.
            steps:
              - leader: Advance!
                follower: Advance one step.
                distance: out
              - leader: Retreat!
                follower: Retreat one step.
                distance: out
            closing: Salute.
            """;

    @TempDir
    Path folder;

    private static List<String> said(SchoolFolder school) {
        return school.findings().stream()
                .map(finding -> finding.file().name()
                        + finding.span()
                        + finding.rule()
                        + finding.what().english())
                .toList();
    }

    /** Whatever is typed, and in whichever file. */
    @ParameterizedTest
    @CsvSource({
        "one.yaml, beginner, beginer",
        "one.yaml, beginner, training",
        "one.yaml, 'gear: [glove]', 'needs: [two, three]'",
        "one.yaml, 'steps:', 'steps'",
        "new.yaml, Steps, Other steps",
        "school.yaml, name, nam"
    })
    void it_counts_as_if_it_were_saved(String file, String old, String now) throws IOException {
        Files.writeString(folder.resolve("one.yaml"), DRILL);
        Files.writeString(
                folder.resolve("two.yaml"), DRILL.replace("Steps", "More").replace("One", "Two"));
        Files.writeString(folder.resolve("school.yaml"), "name: A school\n");
        SchoolFolder saved = SchoolFolder.open(folder);
        Path edited = folder.resolve(file);
        String text = (Files.exists(edited) ? Files.readString(edited) : DRILL).replace(old, now);
        SchoolFolder unsaved = saved.with(new Unsaved(Map.of(edited, text)));
        assertEquals(said(saved), said(unsaved.with(Unsaved.NONE)));
        Files.writeString(edited, text);
        assertEquals(said(SchoolFolder.open(folder)), said(unsaved));
        assertEquals(said(unsaved), said(unsaved.again((done, all) -> {})));
    }

    @Test
    void texts_alone_are_a_school_of_their_own() throws IOException {
        Files.writeString(folder.resolve("two.yaml"), "no drill");
        SchoolFolder alone = SchoolFolder.of(folder, new Unsaved(Map.of(folder.resolve("one.yaml"), DRILL)));
        assertEquals(1, alone.entries().size());
        assertEquals(
                List.of(),
                alone.findings().stream()
                        .map(finding -> finding.what().english())
                        .toList());
        assertTrue(alone.drill(folder.resolve("one.yaml"), DRILL).isPresent());
        assertFalse(alone.drill(folder.resolve("one.yaml"), "steps: [").isPresent());
    }

    @ParameterizedTest
    @CsvSource({
        "one.yaml, DRILL",
        "deeper/one.yml, DRILL",
        "school.yaml, SETTINGS",
        "roster.csv, ROSTER",
        "classes/tonight.yaml, CLASS",
        "terms/winter.yaml, TERM",
        "classes/plans/kept.yaml, ",
        "target/one.yaml, ",
        ".hidden.yaml, ",
        "notes.txt, "
    })
    void a_file_is_read_as_its_place_and_name_say(String file, FileKind kind) {
        assertEquals(Optional.ofNullable(kind), FileKind.of(folder, folder.resolve(file)));
    }
}
