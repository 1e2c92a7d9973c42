package org.drillwright.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.drillwright.plan.term.Exam;
import org.drillwright.plan.term.Pace;
import org.drillwright.plan.term.Term;
import org.drillwright.plan.term.TermDay;
import org.drillwright.plan.term.TermGroup;
import org.drillwright.source.Finding;
import org.drillwright.source.Severity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TermReaderTest {

    private static final String DATES = "dates:\n- {key: c1, date: 2026-09-02}\n- {key: c2, date: 2026-09-09}\n";
    private static final String GROUPS = "groups:\n- {name: all, drills: [basics]}\n";

    private static Reading<Term> read(String text) {
        return new TermReader(
                        Duration.ofMinutes(60),
                        List.of("Ash", "Bo", "Cy"),
                        Map.of(
                                "basics", List.of("thrust", "parry"),
                                "thrust", List.of("thrust"),
                                "parry", List.of("parry")))
                .read("terms/t.yaml", text.getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void every_key_is_read() {
        assertEquals(
                Optional.of(new Term(
                        "Autumn",
                        "Hall",
                        Optional.of(ZoneId.of("Europe/Paris")),
                        List.of(
                                new TermDay(
                                        "c1",
                                        LocalDate.of(2026, 9, 2),
                                        Optional.of(LocalTime.of(19, 30)),
                                        Duration.ofMinutes(75),
                                        false,
                                        Set.of()),
                                new TermDay(
                                        "c2",
                                        LocalDate.of(2026, 9, 9),
                                        Optional.of(LocalTime.of(18, 0)),
                                        Duration.ofMinutes(45),
                                        true,
                                        Set.of("Bo"))),
                        List.of(
                                new TermGroup("first", List.of("Ash"), List.of("parry", "thrust")),
                                new TermGroup("others", List.of("Bo", "Cy"), List.of("thrust", "parry"))),
                        new Pace(3, Duration.ofMinutes(15), Duration.ofMinutes(5)),
                        Map.of("parry", 3),
                        Map.of("thrust", 4),
                        Optional.of(new Exam(LocalDate.of(2026, 12, 2), List.of("parry"), 2)))),
                read("""
                        title: Autumn
                        place: Hall
                        zone: Europe/Paris
                        begins: "19:30"
                        minutes: 75
                        new-a-class: 3
                        new: 15
                        again: 5
                        dates:
                          - {key: c1, date: 2026-09-02}
                          - {key: c2, date: 2026-09-09, begins: "18:00", minutes: 45, no-new: yes, away: [Bo]}
                        groups:
                          - {name: first, people: [Ash], drills: [parry, basics]}
                          - {name: others, drills: [basics]}
                        value: {parry: 3}
                        fundamentals: {at-least-every: 4, drills: [thrust]}
                        exam: {date: 2026-12-02, drills: [parry], workings: 2}
                        """).value());
    }

    @Test
    void what_is_left_out_has_its_usual_value() {
        Term term = read(DATES + GROUPS).value().orElseThrow();
        assertEquals(Pace.USUAL, term.pace());
        assertEquals(Duration.ofMinutes(60), term.days().get(0).length());
        assertEquals(List.of("Ash", "Bo", "Cy"), term.groups().get(0).people());
        assertEquals(Optional.empty(), term.exam());
    }

    /** Each error with its line and what is told of it; a semicolon stands for the end of a line. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "groups:;- {name: all, drills: [basics]} | 1 | 'dates' is missing.",
                "dates:;- {date: 2026-09-02};groups: [] | 2 | 'key' is missing.",
                "dates:;- {key: a, date: 2026-09-02};- {key: a, date: 2026-09-09};groups: [] | 3 | Two classes"
                        + " have the key 'a'.",
                "dates:;- {key: a, date: 2026-09-09};- {key: b, date: 2026-09-02};groups: [] | 3 | This date"
                        + " isn't after the one before it, 2026-09-09.",
                "dates: [];groups:;- {name: x, drills: [thurst]} | 3 | 'thurst' is unknown here.",
                "dates: [];groups:;- {name: x, drills: [parry], people: [Asch]} | 3 | 'Asch' is unknown here.",
                "dates: [];groups:;- {name: x, people: [Bo], drills: [parry]};- {name: y, people: [Bo], drills:"
                        + " [parry]} | 4 | Bo is listed a second time.",
                "dates: [];groups:;- {name: x, drills: [parry]};- {name: y, drills: [parry]} | 4 | A second"
                        + " group lists nobody.",
                "dates: [];groups:;- {name: x, people: [Bo], drills: [parry]};- {name: x, drills: [parry]} | 4"
                        + " | Two groups are called 'x'.",
                "dates: [];groups:;- {name: x, drills: [parry]};value: {thrust: 2} | 4 | 'thrust' is unknown here.",
                "dates: [];groups:;- {name: x, drills: [parry]};exam:;  date: 2026-12-02;  drills: [thrust] | 6"
                        + " | 'thrust' is unknown here.",
                "dates: [];groups:;- {name: x, drills: [parry]};fundamentals: {drills: [thrust]} | 4 | 'thrust'"
                        + " is unknown here.",
                "zone: Europe/Nowhere;dates: [];groups: [] | 1 | 'Europe/Nowhere' is not a known time zone.",
                "begins: 25:00;dates: [];groups: [] | 1 | 'begins' needs a time of day.",
                "begins: \"7pm\";dates: [];groups: [] | 1 | 'begins' needs a time of day.",
                "datse: [];groups: [] | 1 | The key 'datse' is unknown here."
            })
    void errors_are_told_with_their_place_and_a_way_out(String lines, int line, String what) {
        Reading<Term> reading = read(lines.replace(";", "\n") + "\n");
        Finding finding = reading.findings().stream()
                .filter(one -> one.what().english().equals(what))
                .findFirst()
                .orElseThrow(() -> new AssertionError(reading.findings().toString()));
        assertEquals(Severity.ERROR, finding.severity());
        assertEquals(line, finding.file().position(finding.span().start()).line());
        assertTrue(!finding.wayOut().english().isBlank());
        assertEquals(Optional.empty(), reading.value());
    }

    @Test
    void an_exam_before_the_first_class_is_worth_a_question() {
        Reading<Term> reading = read(DATES + GROUPS + "exam: {date: 2026-09-02, drills: [parry]}\n");
        assertEquals(1, reading.findings().size());
        assertEquals(Severity.WARNING, reading.findings().get(0).severity());
        assertTrue(reading.value().isPresent());
    }
}
