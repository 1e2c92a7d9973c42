package org.drillwright.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.time.DayOfWeek;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.drillwright.model.School;
import org.drillwright.plan.roster.Apart;
import org.drillwright.plan.roster.Hand;
import org.drillwright.plan.roster.Naming;
import org.drillwright.plan.roster.Person;
import org.drillwright.plan.roster.Roster;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** All people are invented. */
class RosterReaderTest {

    private static final Roster WANTED = new Roster(
            List.of(
                    new Person(
                            "Ash Fenwick",
                            Optional.of("beginner"),
                            Optional.of(Hand.LEFT),
                            OptionalInt.of(3),
                            Set.of("thrust", "parry"),
                            List.of(DayOfWeek.MONDAY, DayOfWeek.FRIDAY),
                            true,
                            false),
                    new Person(
                            "Bo",
                            Optional.empty(),
                            Optional.empty(),
                            OptionalInt.empty(),
                            Set.of(),
                            List.of(),
                            false,
                            true)),
            List.of("Cy"),
            List.of(new Apart("Ash Fenwick", "Bo")));

    private static Reading<Roster> read(String name, String text) {
        return new RosterReader(School.DEFAULT, List.of("thrust", "parry"))
                .read(name, text.getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void a_roster_in_yaml() {
        assertEquals(Optional.of(WANTED), read("roster.yaml", """
                people:
                  - name: Ash Fenwick
                    level: beginner
                    hand: left
                    skill: 3
                    knows: [thrust, parry]
                    days: [monday, Friday]
                    away: yes
                    apart: [Bo]
                  - {name: Bo, solo: true}
                assistants: [Cy]
                """).value());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {",", ";"})
    void a_roster_as_a_table(String separator) {
        String table = """
                Name,role,level,hand,skill,knows,days,away,solo,apart
                Ash Fenwick,,Beginner,left,3,thrust parry,monday friday,x,,Bo
                Bo,student,,,,,,,yes,
                Cy,assistant,,,,,,,,
                """;
        assertEquals(
                Optional.of(WANTED),
                read("roster.csv", table.replace(",", separator)).value());
    }

    @Test
    void initials_are_the_first_letters() {
        assertEquals(
                "AF", Naming.initials(WANTED.names()).of(WANTED.people().get(0).name()));
    }

    private static List<String> places(Reading<Roster> reading) {
        return reading.findings().stream()
                .map(finding -> finding.severity() + " " + finding.position().line() + ":"
                        + finding.position().column() + " " + finding.what().english())
                .toList();
    }

    @Test
    void slips_in_yaml_are_shown_where_they_stand() {
        assertEquals(
                List.of(
                        "ERROR 2:24 'beginer' is unknown here.",
                        "WARNING 3:24 There is no drill 'thurst' in this folder.",
                        "ERROR 3:41 There is no 'Zed' on this roster.",
                        "ERROR 4:12 There is a 'Ash' already (line 2).",
                        "ERROR 4:17 The key 'hnad' is unknown here.",
                        "ERROR 5:12 'instructor' means whoever teaches, so it can't be a name."),
                places(read("roster.yaml", """
                        people:
                          - {name: Ash, level: beginer}
                          - {name: Bo, knows: [thurst], apart: [Zed]}
                          - {name: Ash, hnad: left}
                          - {name: instructor}
                        """)));
    }

    @Test
    void slips_in_a_table_are_shown_where_they_stand() {
        assertEquals(
                List.of(
                        "ERROR 2:5 'lfet' is unknown here.",
                        "ERROR 3:1 There is a 'Ash' already (line 2).",
                        "ERROR 3:11 'skill' needs a whole number from 0 to 99.",
                        "ERROR 4:1 This line has no name.",
                        "ERROR 5:17 There is no 'Zed' on this roster."),
                places(read("roster.csv", """
                        name,hand,skill,apart
                        Ash,lfet,3,
                        Ash,right,high,
                        ,left,,
                        Bo,right,     7,Zed
                        """)));
    }

    @Test
    void former_names_stand_for_the_present_ones_and_a_ring_is_told() {
        String text = "people: [{name: Pippa, was: [Pip, P]}, {name: Bo, was: [Pippa]}]\n";
        assertEquals(
                Map.of("Pip", "Bo", "P", "Bo", "Pippa", "Bo"),
                read("roster.yaml", text).value().orElseThrow().former());
        assertEquals(
                Map.of("Pip", "Pippa"),
                read("roster.csv", "Name,Former name\nPippa,Pip\n")
                        .value()
                        .orElseThrow()
                        .former());
        assertEquals(
                "It isn't clear who is meant: Bo was Ash was Bo.",
                read("roster.yaml", "people: [{name: Ash, was: [Bo]}, {name: Bo, was: [Ash]}]\n")
                        .findings()
                        .get(0)
                        .what()
                        .english());
    }

    @Test
    void a_name_stands_on_one_line() {
        List<String> table = places(read("roster.csv", "name,level\n\"Ash\nFenwick\",beginner\n"));
        assertEquals(List.of("ERROR 2:1 This name has a line break in it."), table);
        List<String> yaml = places(read("roster.yaml", "people:\n  - {name: \"Ash\\nFenwick\"}\n"));
        assertEquals(List.of("ERROR 2:12 This name has a line break in it."), yaml);
    }

    @Test
    void a_table_without_names_is_no_roster() {
        Reading<Roster> reading = read("roster.csv", "level,hand\nbeginner,left\n");
        assertTrue(reading.value().isEmpty());
        assertEquals(
                List.of("ERROR 1:1 No column is called 'name'. The first line is: 'level', 'hand'."), places(reading));
    }
}
