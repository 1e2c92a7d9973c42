package org.drillwright.print.command.live;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.drillwright.source.Finding;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LiveSchoolTest {

    private static final int DRILLS = 40;

    private static final String LEVELS = """
            levels:
              - {name: novice, turns: one, blades: none}
              - {name: adept, turns: one, blades: none}
            """;

    private final AtomicInteger read = new AtomicInteger();
    private int saved;
    private LiveSchool school;

    @TempDir
    Path folder;

    private void save(int drill, String level, String how) throws IOException {
        Path file = folder.resolve("d" + drill + ".yaml");
        Files.writeString(
                file, String.format("""
                title: Drill %d
                level: %s
                form: solo
                weapon: none
                needs: [%s]
                start: On guard, out of distance.
                opening: Salute. On guard.
                steps:
                  - leader: Advance!
                    follower: Advance one step, %s.
                    distance: out
                closing: Salute.
                """, drill, level, drill == 0 ? "" : "d" + (drill - 1), how + " " + drill));
        FileTime time = FileTime.from(Instant.parse("2026-09-01T12:00:00Z").plusSeconds(10L * saved++));
        Files.setLastModifiedTime(file, time);
    }

    private LiveSchool school() throws IOException {
        String listed =
                IntStream.range(0, DRILLS).mapToObj(drill -> "d" + drill).collect(Collectors.joining(", "));
        Files.writeString(folder.resolve("school.yaml"), "sets:\n  all: {drills: [" + listed + "]}\n");
        for (int drill = DRILLS - 1; drill >= 0; drill--) {
            save(drill, "beginner", "softly");
        }
        return LiveSchool.open(folder, (done, all) -> read.incrementAndGet());
    }

    /** The drill that was saved last before is read again with it: its time alone cannot tell. */
    @Test
    void a_save_reads_the_one_file_that_was_saved() throws IOException {
        LiveSchool school = school();
        assertEquals(DRILLS, read.getAndSet(0));
        save(0, "beginner", "calmly");
        assertEquals(List.of("d0.yaml"), school.look().orElseThrow().changed());
        assertEquals(1, read.getAndSet(0));
        save(5, "beginner", "calmly");
        assertEquals(List.of("d5.yaml"), school.look().orElseThrow().changed());
        assertEquals(2, read.getAndSet(0));
        assertEquals(Optional.empty(), school.look());
        assertEquals(1, read.get());
    }

    /** One that needs the drill has something new said of it; what was drawn of the others is kept. */
    @Test
    void a_change_shows_on_those_it_bears_on() throws IOException {
        LiveSchool school = school();
        Object drawn = school.now().sheet("d9.yaml").orElseThrow().pictures();
        save(3, "training", "softly");
        SchoolUpdate change = school.look().orElseThrow();
        assertEquals(List.of("d3.yaml", "d4.yaml"), change.changed());
        assertEquals(List.of(), change.gone());
        assertSame(drawn, school.now().sheet("d9.yaml").orElseThrow().pictures());
        assertEquals(1, school.now().sheet("d9.yaml").orElseThrow().revision());
        assertEquals(2, school.now().sheet("d4.yaml").orElseThrow().revision());
    }

    private SchoolUpdate after(String name, String text) throws IOException {
        Files.writeString(folder.resolve(name), text);
        return school.look().orElseThrow();
    }

    private void two() throws IOException {
        Files.writeString(folder.resolve("school.yaml"), LEVELS);
        save(0, "novice", "softly");
        save(1, "novice", "softly");
        school = LiveSchool.open(folder);
    }

    /** The drills say what they said; it is the settings in which a level has lost a letter. */
    @Test
    void a_level_misspelled_in_the_settings_is_found_there() throws IOException {
        two();
        SchoolUpdate change = after("school.yaml", LEVELS.replace("novice", "novic"));
        assertEquals(List.of(), change.saved());
        Snapshot now = school.now();
        assertEquals(List.of("school.yaml"), files(now));
        assertEquals(
                "2 drills say 'novice', which is unknown here.",
                now.folderFindings().get(0).what().english());
        assertEquals(2, now.folderFindings().get(0).position().line());
        assertEquals(1, now.tally().errors());
        for (LiveDrill sheet : now.sheets()) {
            assertTrue(sheet.isUnsettled() && sheet.isStale());
            assertEquals(List.of(), sheet.findings());
            assertFalse(sheet.text().isEmpty());
        }
        after("school.yaml", LEVELS);
        assertTrue(school.now().sheets().stream().allMatch(LiveDrill::isReadable));
    }

    /** Also by who looks for the first time: two drills say what is like a level that no drill says. */
    @Test
    void a_level_misspelled_from_the_beginning_is_found_in_the_settings() throws IOException {
        two();
        Files.writeString(folder.resolve("school.yaml"), LEVELS.replace("novice", "novic"));
        assertEquals(List.of("school.yaml"), files(LiveSchool.open(folder).now()));
    }

    /** One drill that says what the settings never knew has slipped itself. */
    @Test
    void a_level_misspelled_in_a_drill_is_found_in_the_drill() throws IOException {
        two();
        String text = Files.readString(folder.resolve("d1.yaml"));
        after("d1.yaml", text.replace("novice", "novic"));
        assertEquals(List.of("d1.yaml"), files(school.now()));
        assertFalse(school.now().sheet("d1.yaml").orElseThrow().isUnsettled());
    }

    /** Without its settings a school has no levels of its own, and that is no drill's fault either. */
    @Test
    void settings_that_cannot_be_read_are_found_in_the_settings_alone() throws IOException {
        two();
        after("school.yaml", LEVELS.replace("turns: one", "trun: one"));
        assertEquals(Set.of("school.yaml"), Set.copyOf(files(school.now())));
        assertTrue(school.now().sheets().stream().allMatch(LiveDrill::isUnsettled));
        assertTrue(files(LiveSchool.open(folder).now()).stream().allMatch("school.yaml"::equals));
    }

    /** Where words and keys are found that are not known. */
    private static List<String> files(Snapshot school) {
        List<Finding> all = new ArrayList<>(school.folderFindings());
        school.sheets().forEach(sheet -> all.addAll(sheet.findings()));
        return all.stream()
                .filter(finding -> finding.rule().startsWith("unknown-"))
                .map(finding -> finding.file().name())
                .toList();
    }

    @Test
    void a_file_with_another_name_is_followed() throws IOException {
        two();
        Files.move(folder.resolve("d1.yaml"), folder.resolve("second.yaml"));
        SchoolUpdate change = school.look().orElseThrow();
        assertEquals(Map.of("d1.yaml", "second.yaml"), change.renamed());
        assertEquals(List.of(), change.gone());
        Files.move(folder.resolve("second.yaml"), folder.resolve("third.yaml"));
        school.look();
        assertEquals(
                Map.of("d1.yaml", "third.yaml", "second.yaml", "third.yaml"),
                school.now().renamed());
    }

    /** Some editors save under the new name and take the old one away, and the text may be another one by then. */
    @Test
    void a_file_with_another_name_and_text_is_followed_by_its_title() throws IOException {
        two();
        String text = Files.readString(folder.resolve("d1.yaml"));
        Files.delete(folder.resolve("d1.yaml"));
        assertEquals(
                Map.of("d1.yaml", "second.yaml"),
                after("second.yaml", text.replace("softly", "calmly")).renamed());
    }

    @Test
    void a_file_that_goes_while_another_comes_is_gone() throws IOException {
        two();
        String text = Files.readString(folder.resolve("d1.yaml"));
        Files.delete(folder.resolve("d1.yaml"));
        SchoolUpdate change =
                after("other.yaml", text.replace("Drill 1", "Another").replace("softly", "calmly"));
        assertEquals(Map.of(), change.renamed());
        assertEquals(List.of("d1.yaml"), change.gone());
    }

    /** A folder of drills that is moved: each is found by its own file name. */
    @Test
    void files_that_say_the_same_are_followed_by_their_names() throws IOException {
        two();
        String text = Files.readString(folder.resolve("d1.yaml"));
        Files.createDirectories(folder.resolve("a"));
        Files.writeString(folder.resolve("a/x.yaml"), text);
        Files.writeString(folder.resolve("a/y.yaml"), text);
        school.look();
        Files.move(folder.resolve("a"), folder.resolve("b"));
        assertEquals(
                Map.of("a/x.yaml", "b/x.yaml", "a/y.yaml", "b/y.yaml"),
                school.look().orElseThrow().renamed());
    }
}
