package org.drillwright.read;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import org.drillwright.model.School;
import org.drillwright.model.Weapon;
import org.drillwright.plan.roster.BothNew;
import org.drillwright.plan.roster.ClassBrief;
import org.drillwright.plan.roster.ClassPractice;
import org.drillwright.plan.roster.First;
import org.drillwright.plan.roster.Hall;
import org.drillwright.plan.roster.LeftOver;
import org.drillwright.plan.roster.Mode;
import org.drillwright.plan.roster.Movement;
import org.drillwright.plan.roster.OwnBlock;
import org.drillwright.plan.roster.Person;
import org.drillwright.plan.roster.Roster;
import org.drillwright.plan.roster.Timing;
import org.drillwright.plan.roster.Wanted;
import org.junit.jupiter.api.Test;

class ClassReaderTest {

    private static final Roster ROSTER =
            new Roster(List.of(Person.named("Ash"), Person.named("Bo")), List.of("Cy"), List.of());

    private static Reading<ClassBrief> read(String text) {
        return new ClassReader(School.DEFAULT, ROSTER, List.of("thrust", "parry"))
                .read("class.yaml", text.getBytes(StandardCharsets.UTF_8));
    }

    /** A school of 500 drills would be told whole for one slip. */
    @Test
    void a_slip_is_not_answered_with_hundreds_of_names() {
        List<String> drills = IntStream.rangeClosed(101, 600)
                .mapToObj(number -> "drill-" + number)
                .toList();
        ClassReader reader = new ClassReader(School.DEFAULT, ROSTER, drills);
        List<String> told = reader
                .read("class.yaml", "{date: 2026-09-14, drills: [dril-300, waltz]}".getBytes(StandardCharsets.UTF_8))
                .findings()
                .stream()
                .map(finding -> finding.wayOut().english())
                .toList();
        assertEquals(
                List.of(
                        "Did you mean 'drill-300'?",
                        "Known: drill-101, drill-102, drill-103, drill-104, drill-105, drill-106, drill-107, drill-108,"
                                + " drill-109, drill-110, drill-111, drill-112 and 488 more."),
                told);
    }

    @Test
    void every_key_is_read() {
        Timing usual = Timing.USUAL;
        assertEquals(
                Optional.of(new ClassBrief(
                        LocalDate.of(2026, 9, 14),
                        Optional.of(Duration.ofMinutes(75)),
                        Optional.of(Weapon.SABRE),
                        Mode.TRAINING,
                        List.of("parry", "thrust"),
                        Optional.empty(),
                        Map.of(
                                "parry",
                                new Wanted(
                                        "parry",
                                        5,
                                        true,
                                        OptionalInt.of(6),
                                        OptionalInt.of(3),
                                        Optional.of(Duration.ofSeconds(90)))),
                        OptionalInt.of(4),
                        Movement.FREE,
                        new ClassPractice(LeftOver.SOLO, BothNew.WANTED, 6, First.KNOWER),
                        false,
                        Set.of("Ash", "Cy"),
                        Set.of("Bo"),
                        new Timing(
                                usual.opening(),
                                Duration.ZERO,
                                usual.closing(),
                                usual.changeover(),
                                Duration.ofSeconds(5),
                                usual.change(),
                                usual.reset(),
                                usual.explainNew(),
                                usual.explainKnown(),
                                usual.wholeClass()),
                        Optional.of(new Hall(1800, 950, 600, 200, 150, 200, 100, 100)),
                        List.of(new OwnBlock(
                                "Glove tag", Duration.ofMinutes(6), OwnBlock.Place.SPARE, "No running.")))),
                read("""
                        date: 2026-09-14
                        minutes: 75
                        weapon: sabre
                        mode: training
                        drills: [parry, thrust]
                        settings:
                          parry: {value: 5, must: yes, repetitions: 6, rounds: 3, explain: 90}
                        rounds: 4
                        movement: free
                        left-over: solo
                        both-new: wanted
                        eyes: 6
                        first: knower
                        instructor: no
                        away: [Ash, Cy]
                        solo: [Bo]
                        timing: {warm-up: 0, swap: 5}
                        hall: {length: 18, width: "9,5", side-gap: 1.5}
                        blocks: [{name: Glove tag, minutes: 6, place: spare, how: No running.}]
                        """).value());
    }

    @Test
    void most_of_it_may_be_left_out() {
        ClassBrief brief = read("date: 2026-09-14\nset: beginner\n").value().orElseThrow();
        assertEquals(ClassBrief.on(brief.date()).timing(), brief.timing());
        assertEquals(Optional.of("beginner"), brief.set());
        assertEquals(Wanted.drill("thrust"), brief.wanted("thrust"));
    }

    @Test
    void slips_are_shown_where_they_stand() {
        assertEquals(
                List.of(
                        "1:1 'date' is missing.",
                        "1:10 'thurst' is unknown here.",
                        "2:8 'Ahs' is unknown here.",
                        "3:7 'length' is missing.",
                        "3:21 'lane-length' needs a length in metres.",
                        "3:31 'width' needs a length in metres.",
                        "4:7 'leaning' is unknown here.",
                        "5:12 'prary' is unknown here."),
                read("""
                        drills: [thurst]
                        away: [Ahs]
                        hall: {lane-length: 0, width: wide}
                        mode: leaning
                        settings: {prary: {value: 2}}
                        """).findings().stream()
                        .map(finding -> finding.position().line() + ":"
                                + finding.position().column() + " "
                                + finding.what().english())
                        .toList());
    }
}
