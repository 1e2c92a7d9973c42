package org.drillwright.school;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drillwright.check.Example;
import org.drillwright.model.DrillSet;
import org.drillwright.source.Finding;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SchoolFolderTest {

    private static final String DRILL = """
            title: %s
            level: beginner
            form: solo
            weapon: none
            gear: [plimsolls]
            start: On guard, out of distance.
            opening: Salute. On guard.
            steps:
              - leader: Advance!
                follower: Advance.
                distance: out
              - leader: Retreat!
                follower: %s
                distance: out
            closing: Salute.
            """;

    @TempDir
    Path folder;

    private void write(String name, String text) throws IOException {
        Path file = folder.resolve(name);
        Files.createDirectories(file.getParent());
        Files.writeString(file, text, StandardCharsets.UTF_8);
    }

    private void drill(String name, String title, String turn) throws IOException {
        write(name, String.format(DRILL, title, turn));
    }

    private static List<String> names(SchoolFolder school) {
        return school.entries().stream().map(SchoolFolder.Entry::name).toList();
    }

    private static List<String> shown(List<Finding> findings) {
        return findings.stream()
                .map(finding -> finding.file().name() + " " + finding.severity().word() + " " + finding.rule())
                .toList();
    }

    @Test
    void drills_are_found_below_the_folder_in_the_order_of_their_names() throws IOException {
        drill("b.yaml", "B", "Retreat.");
        drill("a/z.yaml", "Z", "Jump back.");
        drill("a/deep/er/y.yaml", "Y", "Retreat at once.");
        write("readme.md", "Not a drill.");
        SchoolFolder school = SchoolFolder.open(folder);
        assertEquals(List.of("a/deep/er/y.yaml", "a/z.yaml", "b.yaml"), names(school));
        assertEquals(List.of(), shown(school.findings()));
        assertTrue(school.entries().stream().allMatch(SchoolFolder.Entry::isSound));
        assertEquals(
                "Z",
                school.entry("z").orElseThrow().subject().orElseThrow().drill().title());
        assertEquals(Optional.empty(), school.entry("x"));
    }

    @Test
    void hidden_folders_hidden_files_and_what_programs_fill_are_passed_over() throws IOException {
        drill("a.yaml", "A", "Retreat.");
        drill(".git/b.yaml", "B", "Hold.");
        drill("target/c.yaml", "C", "Wait.");
        drill("sub/target/d.yaml", "D", "Wait.");
        drill("._a.yaml", "E", "Wait.");
        assertEquals(List.of("a.yaml"), names(SchoolFolder.open(folder)));
    }

    @Test
    void a_folder_that_is_itself_hidden_or_called_target_is_read() throws IOException {
        drill("target/a.yaml", "A", "Retreat.");
        assertEquals(List.of("a.yaml"), names(SchoolFolder.open(folder.resolve("target"))));
    }

    @Test
    void with_broken_settings_drills_are_read_but_not_judged() throws IOException {
        write("school.yaml", "levles: []\n");
        drill("a.yaml", "A", "Retreat or hold.");
        write("b.yaml", "titel: B\n");
        SchoolFolder school = SchoolFolder.open(folder);
        assertEquals(
                List.of("school.yaml note broken-yaml", "school.yaml error unknown-key"),
                shown(school.folderFindings()).stream()
                        .sorted(java.util.Comparator.reverseOrder())
                        .toList());
        assertEquals(List.of(), school.entries().get(0).findings());
        assertFalse(school.entries().get(0).isSound());
        assertTrue(shown(school.entries().get(1).findings()).contains("b.yaml error unknown-key"));
    }

    @Test
    void settings_apply_to_the_drills() throws IOException {
        write(
                "school.yaml",
                "levels: [{name: first}, {name: beginner, turns: free, blades: none}]\nsets: {ring: {drills: [a, x]}}\n");
        drill("a.yaml", "A", "Retreat or hold.");
        SchoolFolder school = SchoolFolder.open(folder);
        // The level leaves turns free, so the choice is no error; which way is taken is not judged.
        assertEquals(
                List.of("school.yaml error broken-set", "a.yaml warning not-fully-checked"), shown(school.findings()));
        assertEquals(2, school.school().levels().size());
    }

    @Test
    void settings_are_found_under_other_capitals_and_the_short_ending() throws IOException {
        for (String name : List.of("School.yaml", "school.yml", "SCHOOL.YAML")) {
            write(name, "name: Kelp Street\n");
            SchoolFolder school = SchoolFolder.open(folder);
            assertEquals("Kelp Street", school.school().name());
            assertEquals(List.of(name + " note ids-too-alike"), shown(school.findings()));
            assertEquals(List.of(), names(school));
            Files.delete(folder.resolve(name));
        }
    }

    @Test
    void a_file_that_cannot_be_opened_is_a_finding() throws IOException {
        drill("a.yaml", "A", "Retreat.");
        drill("b.yaml", "B", "Hold.");
        List<Integer> read = new ArrayList<>();
        SchoolFolder school = SchoolFolder.open(folder, (done, all) -> {
            read.add(done);
            if (done == 1) {
                assertTrue(folder.resolve("b.yaml").toFile().delete());
            }
        });
        assertEquals(List.of(1, 2), read);
        assertEquals(List.of("b.yaml error not-plain-text"), shown(school.findings()));
        assertTrue(school.entries().get(0).isSound());
    }

    @Test
    void a_folder_that_is_not_there_is_no_folder() {
        assertThrows(IOException.class, () -> SchoolFolder.open(folder.resolve("nowhere")));
    }

    @Test
    void an_empty_folder_is_read() throws IOException {
        SchoolFolder school = SchoolFolder.open(folder);
        assertEquals(List.of(), school.entries());
        assertEquals(List.of(), school.findings());
    }

    @Test
    void ids_that_are_one_on_another_computer_are_found() throws IOException {
        drill("a/parry.yaml", "A", "Retreat.");
        drill("b/Parry.yaml", "B", "Hold.");
        drill("c/e\u0301.yaml", "C", "Wait.");
        drill("d/\u00e9.yaml", "D", "Jump back.");
        drill("e/parry.yml", "E", "Lunge.");
        assertEquals(
                List.of(
                        "b/Parry.yaml error ids-too-alike",
                        "d/\u00e9.yaml error ids-too-alike",
                        "e/parry.yml error ids-too-alike"),
                shown(SchoolFolder.open(folder).findings()).stream()
                        .filter(finding -> finding.contains("error"))
                        .toList());
    }

    @Test
    void a_drill_is_known_by_the_normal_form_of_its_name() throws IOException {
        drill("e\u0301p.yaml", "A", "Retreat.");
        write("b.yaml", String.format(DRILL, "B", "Jump back.") + "needs: [\u00e9p]\n");
        write("school.yaml", "sets: {ring: {drills: [\u00e9p, b]}}\n");
        SchoolFolder school = SchoolFolder.open(folder);
        assertEquals(List.of(), shown(school.findings()));
        assertEquals(
                "A",
                school.entry("e\u0301p")
                        .orElseThrow()
                        .subject()
                        .orElseThrow()
                        .drill()
                        .title());
    }

    @Test
    void the_short_ending_is_noted() throws IOException {
        drill("a.yml", "A", "Retreat.");
        drill("b.YML", "B", "Jump back.");
        SchoolFolder school = SchoolFolder.open(folder);
        assertEquals(List.of("a.yml note ids-too-alike", "b.YML note ids-too-alike"), shown(school.findings()));
        assertTrue(school.entries().get(0).isSound());
    }

    @Test
    void one_broken_drill_leaves_the_others_alone() throws IOException {
        drill("a.yaml", "A", "Retreat.");
        write("b.yaml", "title: One: two\n");
        SchoolFolder school = SchoolFolder.open(folder);
        assertEquals(List.of("b.yaml error broken-yaml"), shown(school.findings()));
        assertTrue(school.entry("a").orElseThrow().isSound());
        assertFalse(school.entry("b").orElseThrow().isSound());
    }

    @Test
    void a_set_gives_its_drills_in_teaching_order() throws IOException {
        drill("a.yaml", "A", "Retreat.");
        drill("b.yaml", "B", "Hold.");
        write("c.yaml", "title: [\n");
        SchoolFolder school = SchoolFolder.open(folder);
        assertEquals(
                List.of("b.yaml", "c.yaml", "a.yaml"),
                names(school, new DrillSet("ring", Optional.empty(), List.of("b", "c", "x", "a"))));
        assertEquals(List.of("a.yaml", "b.yaml"), names(school, new DrillSet("l", Optional.of("beginner"), List.of())));
        assertEquals(List.of(), names(school, new DrillSet("l", Optional.of("training"), List.of())));
    }

    private void needing(String name, String needs, String more) throws IOException {
        String head = "title: " + name + "\nneeds: [" + needs + "]\n" + more;
        write(name, Example.complete(head + (more.contains("level:") ? "" : "level: beginner\n")));
    }

    /** By hand: e and b need nothing in the set and keep their places; a waits for d, and c for a. */
    @Test
    void a_drill_stands_behind_those_it_needs_and_else_as_it_is_listed() throws IOException {
        needing("a.yaml", "d", "");
        needing("b.yaml", "", "");
        needing("c.yaml", "between", "");
        needing("d.yaml", "", "");
        needing("e.yaml", "", "");
        needing("between.yaml", "a", "");
        SchoolFolder school = SchoolFolder.open(folder);
        assertEquals(
                List.of("e.yaml", "b.yaml", "d.yaml", "a.yaml", "c.yaml"),
                names(school, new DrillSet("ring", Optional.empty(), List.of("c", "e", "a", "b", "d"))));
        assertEquals(
                List.of("d.yaml", "e.yaml", "a.yaml", "b.yaml"),
                names(school, new DrillSet("ring", Optional.empty(), List.of("d", "e", "a", "b"))));
    }

    @Test
    void a_circle_of_needs_loses_no_drill() throws IOException {
        needing("a.yaml", "b", "");
        needing("b.yaml", "a", "");
        needing("c.yaml", "", "");
        SchoolFolder school = SchoolFolder.open(folder);
        assertEquals(
                List.of("c.yaml", "a.yaml", "b.yaml"),
                names(school, new DrillSet("ring", Optional.empty(), List.of("a", "b", "c"))));
    }

    @Test
    void a_set_is_named_by_level_weapon_and_tag_and_goes_by_level() throws IOException {
        needing("a.yaml", "", "weapon: sabre\ntags: [spring]\n");
        needing("b.yaml", "", "weapon: sabre\n");
        needing("c.yaml", "", "weapon: foil\ntags: [spring]\n");
        needing("0.yaml", "", "level: training\nweapon: sabre\ntags: [spring]\n");
        write("school.yaml", """
                sets:
                  sabre: {weapon: sabre}
                  spring: {tag: spring}
                  both: {weapon: sabre, tag: spring, level: beginner}
                """);
        SchoolFolder school = SchoolFolder.open(folder);
        assertEquals(
                List.of("a.yaml", "b.yaml", "0.yaml"),
                names(school, school.school().set("sabre").orElseThrow()));
        assertEquals(
                List.of("a.yaml", "c.yaml", "0.yaml"),
                names(school, school.school().set("spring").orElseThrow()));
        assertEquals(
                List.of("a.yaml"), names(school, school.school().set("both").orElseThrow()));
    }

    private static List<String> names(SchoolFolder school, DrillSet set) {
        return school.entriesOf(set).stream().map(SchoolFolder.Entry::name).toList();
    }

    @Test
    void a_large_file_is_not_read_to_its_end() throws IOException {
        write("a.yaml", "#".repeat(300_000));
        assertEquals(
                List.of("a.yaml error several-in-one-file"),
                shown(SchoolFolder.open(folder).findings()));
    }
}
