package org.drillwright.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillwright.model.CardSize;
import org.drillwright.model.DrillSet;
import org.drillwright.model.Language;
import org.drillwright.model.Level;
import org.drillwright.model.School;
import org.drillwright.model.SchoolFont;
import org.drillwright.model.SheetSize;
import org.drillwright.model.Weapon;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SchoolReaderTest {

    private static Reading<ReadSchool> read(String text) {
        return SchoolReader.read("school.yaml", text.getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void every_setting_is_read() {
        School school = read("""
                name: Kelp Street (invented)
                levels:
                  - {name: first, turns: one, blades: none}
                  - {name: second, turns: free, blades: free}
                sets:
                  ring: {drills: [a, b]}
                  all: {level: second}
                gear:
                  second sabre: [sabre mask]
                words:
                  grab: lunge
                parries:
                  foil: {quinte: high inside}
                works-on: [wit]
                card: a5
                sheet: letter
                language: fr
                font: {regular: ours.ttf, bold: ours-bold.ttf}
                class-minutes: 90
                seconds-a-count: 1,5
                """).value().orElseThrow().school();
        assertEquals(
                new School(
                        "Kelp Street (invented)",
                        List.of(
                                new Level("first", Level.Turns.ONE, Level.Blades.NONE),
                                new Level("second", Level.Turns.FREE, Level.Blades.FREE)),
                        List.of(
                                new DrillSet("ring", Optional.empty(), List.of("a", "b")),
                                new DrillSet("all", Optional.of("second"), List.of())),
                        Map.of("second sabre", List.of("sabre mask")),
                        Map.of("grab", "lunge"),
                        Map.of(Weapon.FOIL, Map.of("quinte", "high inside")),
                        List.of("wit"),
                        CardSize.A5,
                        SheetSize.LETTER,
                        new Language("fr"),
                        Optional.of(new SchoolFont(
                                Optional.of(new SchoolFont.Cuts("ours.ttf", "ours-bold.ttf")), List.of())),
                        Duration.ofMinutes(90),
                        Duration.ofMillis(1500)),
                school);
    }

    @Test
    void one_font_file_serves_for_both_cuts() {
        School school = read("font: ours.ttf\n").value().orElseThrow().school();
        assertEquals(
                Optional.of(new SchoolFont(Optional.of(new SchoolFont.Cuts("ours.ttf", "ours.ttf")), List.of())),
                school.font());
    }

    @Test
    void fonts_of_other_scripts_stand_beside_the_usual_one() {
        School school =
                read("font: {also: [one.ttf, two.ttf]}\n").value().orElseThrow().school();
        assertEquals(Optional.of(new SchoolFont(Optional.empty(), List.of("one.ttf", "two.ttf"))), school.font());
    }

    @Test
    void a_bold_font_alone_sets_no_words() {
        assertEquals(1, read("font: {bold: ours-bold.ttf}\n").findings().size());
        assertEquals(1, read("font: {}\n").findings().size());
    }

    @Test
    void what_a_school_leaves_out_has_its_default() {
        School school = read("name: Kelp Street\n").value().orElseThrow().school();
        assertEquals(School.DEFAULT.levels(), school.levels());
        assertEquals(CardSize.A6, school.card());
        assertEquals(Duration.ofSeconds(2), school.count());
    }

    /** Four of a sheet: A6 of A4, a quarter of Letter. */
    @Test
    void the_usual_card_goes_by_the_sheet() {
        assertEquals(
                CardSize.QUARTER_LETTER,
                read("sheet: letter\n").value().orElseThrow().school().card());
        assertEquals(
                CardSize.A6,
                read("sheet: letter\ncard: a6\n").value().orElseThrow().school().card());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "levles: []                          | error unknown-key 1:1 'levles'",
                "levels: [{turns: one}]              | error key-missing 1:10 ''",
                "levels: [{name: a, turns: two}]     | error unknown-word 1:27 'two'",
                "levels: [beginner]                  | error wrong-kind 1:10 'beginner'",
                "sets: {ring: {}}                    | error key-missing 1:14 ''",
                "sets: {ring: {level: expert}}       | error unknown-word 1:22 'expert'",
                "sets: {ring: {weapon: rapier}}      | error unknown-word 1:23 'rapier'",
                "sets: {ring: [a]}                   | error wrong-kind 1:8 'ring'",
                "card: a8                            | error unknown-word 1:7 'a8'",
                "class-minutes: an hour              | error wrong-kind 1:16 'an hour'",
                "seconds-a-count: -1                 | error wrong-kind 1:18 '-1'",
                "gear: {sabre: mask}                 | error wrong-kind 1:8 'sabre'",
                "parries: {rapier: {}}               | error unknown-key 1:11 'rapier'",
                "words: {grab: [lunge]}              | error wrong-kind 1:9 'grab'",
            })
    void a_setting_that_cannot_be_read_is_found(String text, String finding) {
        Reading<ReadSchool> reading = read(text + "\n");
        assertEquals(List.of(finding), Files.shown(reading.findings()));
        assertTrue(reading.value().isEmpty());
    }
}
