package org.drillwright.school;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Reading a folder again gives what reading it anew gives, and reads only what was saved. */
class AgainTest {

    private static final int DRILLS = 300;

    /** When a drill was last written, in seconds. */
    private int saves;

    @TempDir
    Path folder;

    private final List<String> told = new ArrayList<>();

    @BeforeEach
    void write_them() throws IOException {
        for (int drill = 0; drill < DRILLS; drill++) {
            save(drill, text(drill, "beginner", drill % 10 == 0 ? "" : "d" + (drill - 1)));
        }
    }

    private static String text(int drill, String level, String needs) {
        return String.format("""
                title: Drill %s
                level: %s
                form: solo
                weapon: none
                needs: [%s]
                start: On guard, out of distance.
                opening: Salute. On guard.
                steps:
                  - leader: Advance!
                    follower: Advance %s.
                    distance: out
                closing: Salute.
                """, drill, level, needs, "softly, " + "slowly ".repeat(drill % 7) + drill);
    }

    private Path file(int drill) {
        return folder.resolve("d" + drill + ".yaml");
    }

    /** Each later than the one before by more than the coarsest clock counts. */
    private void save(int drill, String text) throws IOException {
        Files.writeString(file(drill), text);
        saves += 10;
        Files.setLastModifiedTime(
                file(drill), FileTime.from(Instant.parse("2026-09-01T12:00:00Z").plusSeconds(saves)));
    }

    private SchoolFolder again(SchoolFolder before) throws IOException {
        told.clear();
        return before.again((done, all) -> told.add(done + " of " + all));
    }

    private static List<String> shown(SchoolFolder school) {
        return school.findings().stream()
                .map(one -> one.file() + " " + one.severity() + one.rule() + one.span()
                        + one.what().english() + one.wayOut().english())
                .toList();
    }

    private void assertAsAnew(SchoolFolder school) throws IOException {
        SchoolFolder anew = SchoolFolder.open(folder);
        assertEquals(shown(anew), shown(school));
        assertEquals(
                anew.entries().stream().map(SchoolFolder.Entry::name).toList(),
                school.entries().stream().map(SchoolFolder.Entry::name).toList());
    }

    @Test
    void one_save_reads_one_file_and_the_one_that_was_written_last_before() throws IOException {
        SchoolFolder school = SchoolFolder.open(folder);
        save(7, text(7, "beginner", "d6, d5"));
        school = again(school);
        assertEquals(List.of("1 of 2", "2 of 2"), told);
        save(7, text(7, "beginner", "d5"));
        school = again(school);
        assertEquals(List.of("1 of 1"), told);
        assertEquals(
                List.of("d5"),
                school.entry("d7").orElseThrow().subject().orElseThrow().drill().needs());
        assertAsAnew(school);
    }

    @Test
    void what_changes_bears_on_those_who_need_it_and_on_no_other() throws IOException {
        SchoolFolder school = SchoolFolder.open(folder);
        save(15, text(15, "training", "d14"));
        SchoolFolder after = again(school);
        assertEquals(
                Set.of("d15", "d16", "d17", "d18", "d19"),
                Touched.between(school.opened().surroundings(), after.opened().surroundings()));
        assertTrue(shown(after).stream().anyMatch(one -> one.startsWith("d16.yaml ERRORneeds-cannot-be-met")));
        assertAsAnew(after);
    }

    @Test
    void a_new_wording_bears_on_no_other() throws IOException {
        SchoolFolder school = SchoolFolder.open(folder);
        save(15, text(15, "beginner", "d14").replace("slowly", "calmly"));
        SchoolFolder after = again(school);
        assertEquals(
                Set.of(),
                Touched.between(school.opened().surroundings(), after.opened().surroundings()));
        assertAsAnew(after);
    }

    @Test
    void it_is_as_reading_anew_whatever_happens_to_the_files() throws IOException {
        Random random = new Random(3);
        SchoolFolder school = SchoolFolder.open(folder);
        for (int round = 0; round < 12; round++) {
            for (int change = 0; change < 3; change++) {
                happen(random.nextInt(DRILLS), random);
            }
            school = again(school);
            // What was saved, what was saved last before, and what could not be read.
            assertTrue(told.size() <= 4 + 3 * (round + 1), told::toString);
            assertAsAnew(school);
        }
    }

    private void happen(int drill, Random random) throws IOException {
        switch (random.nextInt(6)) {
            case 0 -> Files.deleteIfExists(file(drill));
            case 1 -> save(drill, "title: [half");
            case 2 -> save(drill, text(drill, "training", "d" + random.nextInt(DRILLS)));
            case 3 -> save(drill, text(drill, "beginner", "d" + random.nextInt(DRILLS) + ", nothing"));
            case 4 -> save(drill, text(random.nextInt(DRILLS), "beginner", ""));
            default -> save(DRILLS + drill, text(drill, "intermediate", "d" + drill));
        }
    }

    @Test
    void other_settings_are_read_against_all_drills() throws IOException {
        SchoolFolder school = SchoolFolder.open(folder);
        Files.writeString(folder.resolve("school.yaml"), "name: Another\nwords: {stick it: extend}\n");
        school = again(school);
        assertEquals(DRILLS, told.size());
        assertAsAnew(school);
        Files.writeString(folder.resolve("school.yaml"), "name: [half\n");
        assertAsAnew(again(school));
    }
}
