package org.drillwright.print.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.drillwright.model.Level;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NewCommandTest {

    @TempDir
    Path folder;

    @Test
    void file_is_named_after_the_title() {
        Trial trial = Trial.run(folder, "new", "Coup droit, à l'épée");
        Path file = folder.resolve("coup-droit-a-lepee.yaml");
        assertEquals(0, trial.code(), trial.err());
        assertTrue(trial.out().startsWith("Written: " + file + "\n"), trial.out());
        assertTrue(Files.exists(file));
    }

    /** Words by eye; whatever stands in it for people, the settings are the same. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            fr | # Le nom, tel qu’il est imprimé sur les cartes et les feuilles.
            it | # Il nome, com’è stampato su schede e fogli.
            es | # El nombre, tal como se imprime en tarjetas y hojas.
            de | # Der Name, wie er auf Karten und Blättern steht.
            """)
    void settings_are_remarked_on_in_the_schools_language(String language, String remark) throws IOException {
        assertEquals(
                0, Trial.run(folder, "begin", "--language", language, "Ours").code());
        String settings = Files.readString(folder.resolve("school.yaml"));
        assertTrue(settings.contains("\n" + remark + "\n"), settings);
        Path english = Files.createDirectories(folder.resolve("english"));
        assertEquals(0, Trial.run(english, "begin", "Ours").code());
        assertEquals(
                bare(Files.readString(english.resolve("school.yaml"))).replace("language: en", "language: " + language),
                bare(settings));
    }

    private static String bare(String settings) {
        return settings.replaceAll("(?m)^#.*\\R", "");
    }

    /** Each of the drills to begin with is in the school's language, and is read whole in it. */
    @ParameterizedTest
    @CsvSource({
        "en, Parry quarte.",
        "fr, Parez quarte.",
        "it, Parate di quarta.",
        "es, Pare en cuarta.",
        "de, Pariere Quart."
    })
    void skeleton_speaks_the_schools_language(String language, String parry) throws IOException {
        Files.writeString(folder.resolve("school.yaml"), """
                language: %s
                levels:
                  - {name: feet, turns: one, blades: none}
                  - {name: single, turns: one, blades: free}
                  - {name: joined, turns: joined, blades: free}
                """.formatted(language));
        for (String level : List.of("feet", "single", "joined")) {
            assertEquals(
                    0,
                    Trial.run(folder, "new", "With " + level, "--level", level).code());
        }
        assertEquals(
                0,
                Trial.run(folder, "new", "Alone", "--level", "feet", "--solo").code());
        Trial check = Trial.run(folder, "check", "--strict", "--speak", "en");
        assertEquals(0, check.code(), check.out());
        assertTrue(check.out().startsWith("4 drills: no errors, no warnings, no notes.\n"), check.out());
        assertTrue(check.out().endsWith(" counts: all judged.\n"), check.out());
        for (String level : List.of("single", "joined")) {
            assertTrue(
                    Files.readString(folder.resolve("with-" + level + ".yaml")).contains("follower: " + parry));
        }
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void skeleton_keeps_the_rules_of_every_kind_of_level(boolean solo) throws IOException {
        for (Level.Turns turns : Level.Turns.values()) {
            for (Level.Blades blades : Level.Blades.values()) {
                Path school = Files.createDirectories(folder.resolve(turns + "-" + blades));
                Files.writeString(
                        school.resolve("school.yaml"),
                        "levels:\n  - {name: \"our: own\", turns: " + turns.word() + ", blades: " + blades.word()
                                + "}\n");
                Trial written = solo ? Trial.run(school, "new", "A", "--solo") : Trial.run(school, "new", "A");
                assertEquals(0, written.code(), written.err());
                Trial check = Trial.run(school, "check", "--strict");
                assertEquals(0, check.code(), check.out());
                assertTrue(check.out().startsWith("1 drill: no errors, no warnings, no notes.\n"), check.out());
                assertTrue(check.out().endsWith(" counts: all judged.\n"), check.out());
            }
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"A \"quoted\" \\ title: with # all & that", "- dash", "yes", "1:30", "'", "Шаг вперёд", "[x]"})
    void title_comes_back_as_it_was_typed(String title) throws IOException {
        Trial trial = Trial.run(folder, "new", "--", title.equals("'") ? "'a" : title);
        assertEquals(0, trial.code(), trial.err());
        assertEquals(0, Trial.run(folder, "check", "--strict").code());
    }

    @ParameterizedTest
    @CsvSource({"CON, con-drill", "School, school-drill", "a--b, a-b", "Œuvre, œuvre", "Шаг вперёд, шаг-вперёд"})
    void name_can_be_kept_on_every_system(String title, String id) {
        Trial.run(folder, "new", title);
        assertTrue(Files.exists(folder.resolve(id + ".yaml")), id);
    }

    @Test
    void drill_goes_to_its_levels_folder() throws IOException {
        Files.createDirectory(folder.resolve("beginner"));
        Trial.run(folder, "new", "Steps", "by", "call", "--level", "beginner", "--solo");
        assertTrue(Files.exists(folder.resolve("beginner/steps-by-call.yaml")));
    }

    @Test
    void nothing_is_overwritten() throws IOException {
        SchoolFiles.sound(folder).with("intermediate/x", "");
        Trial trial = Trial.run(folder, "new", "RIPOSTE");
        assertEquals(2, trial.code());
        assertTrue(trial.err().contains("It was left alone"), trial.err());
        assertEquals(SchoolFiles.riposte(), Files.readString(folder.resolve("riposte.yaml")));
    }

    @Test
    void title_longer_than_a_drill_may_have_is_refused() {
        Trial trial = Trial.run(folder, "new", "long ".repeat(30));
        assertEquals(2, trial.code());
        assertTrue(trial.err().contains("at most 120 characters"), trial.err());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "sets:\n  ring:\n    drills:\n      - riposte # the first\n# a remark\n",
                "sets: {ring: {drills: [riposte]}} # a remark\n",
                "\ufeffsets:\n  ring: {drills: [ 'riposte' ]}\n"
            })
    void aSetThatIsAListTakesTheDrillAndNothingElseChanges(String settings) throws IOException {
        SchoolFiles.sound(folder).with("school.yaml", settings);
        Trial trial = Trial.run(folder, "new", "Mine", "--set", "ring");
        assertEquals(0, trial.code(), trial.out() + trial.err());
        assertTrue(trial.out().contains("Added to the set 'ring' in school.yaml."), trial.out());
        String after = Files.readString(folder.resolve("school.yaml"));
        assertEquals(settings, after.replace(", mine", "").replace("      - mine\n", ""));
    }

    @Test
    void a_drill_in_no_set_is_told_of_wherever_it_matters() throws IOException {
        SchoolFiles.sound(folder).with("school.yaml", "sets:\n  ring:\n    drills: [riposte]\n");
        Trial written = Trial.run(folder, "new", "Mine");
        assertTrue(written.out().contains("add '- mine' to that set's list"), written.out());
        assertTrue(Trial.run(folder, "check").out().contains("mine.yaml, line 4, column 8: note (in-no-set)"));
        assertTrue(Trial.run(folder, "cards", "--set", "ring")
                .out()
                .contains("note: in no set, so not printed here: mine, straight."));
    }

    @Test
    void what_holds_by_itself_takes_nothing() throws IOException {
        SchoolFiles.sound(folder).with("school.yaml", "sets:\n  ring:\n    level: intermediate\n");
        Trial refused = Trial.run(folder, "new", "Mine", "--set", "ring");
        assertEquals(2, refused.code());
        assertTrue(refused.err().contains("is not a list"), refused.err());
        assertTrue(Trial.run(folder, "new", "Mine").out().contains("It is in the set 'ring'."));
        assertEquals(2, Trial.run(folder, "new", "Other", "--set", "rng").code());
    }
}
