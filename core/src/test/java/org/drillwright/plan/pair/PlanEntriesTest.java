package org.drillwright.plan.pair;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.drillwright.plan.rounds.Method;
import org.drillwright.plan.rounds.Tally;
import org.drillwright.record.Entry;
import org.junit.jupiter.api.Test;

/** What a class leaves in the record: who was there, then who worked with whom on what, each once. */
class PlanEntriesTest {

    private static final LocalDate DAY = LocalDate.of(2026, 9, 14);

    private static Group group(Group.Kind kind, String... people) {
        return new Group(kind, 1, List.of(people), Optional.empty());
    }

    private static Group helped(Group.Kind kind, String... people) {
        return new Group(kind, 2, List.of(people), Optional.of("instructor"));
    }

    private static List<Entry> entries(Round... rounds) {
        Tally nothing = Tally.of(0, 0, 0, 0, 0, 0, 0, 0);
        return PlanEntries.of(
                new PairingPlan(
                        Arrays.asList(rounds),
                        0,
                        Method.STEPWISE,
                        new Verdict(nothing, nothing),
                        List.of(),
                        List.of(),
                        List.of()),
                DAY);
    }

    private static Entry met(String one, String drill, String other) {
        return Entry.workedWith(DAY, one, drill, other);
    }

    @Test
    void pairs_and_turns_with_the_instructor_are_meetings() {
        assertEquals(
                List.of(
                        Entry.attended(DAY, "Ash"),
                        Entry.attended(DAY, "Bo"),
                        Entry.attended(DAY, "Cy"),
                        met("Ash", "thrust", "Bo"),
                        met("Cy", "thrust", "instructor")),
                entries(new Round(
                        1, "thrust", List.of(group(Group.Kind.PAIR, "Ash", "Bo"), helped(Group.Kind.HELPED, "Cy")))));
    }

    @Test
    void in_a_three_each_meets_both_others() {
        assertEquals(
                List.of(met("Ash", "thrust", "Bo"), met("Ash", "thrust", "Cy"), met("Bo", "thrust", "Cy")),
                entries(new Round(1, "thrust", List.of(group(Group.Kind.THREE, "Ash", "Bo", "Cy"))))
                        .subList(3, 6));
    }

    @Test
    void in_a_three_with_the_instructor_both_meet_the_instructor_too() {
        assertEquals(
                List.of(
                        met("Ash", "thrust", "Bo"),
                        met("Ash", "thrust", "instructor"),
                        met("Bo", "thrust", "instructor")),
                entries(new Round(1, "thrust", List.of(helped(Group.Kind.THREE, "Ash", "Bo"))))
                        .subList(2, 5));
    }

    @Test
    void who_works_alone_was_there_and_met_nobody() {
        assertEquals(
                List.of(Entry.attended(DAY, "Ash")),
                entries(new Round(1, "thrust", List.of(group(Group.Kind.SOLO, "Ash")))));
    }

    @Test
    void two_rounds_of_the_same_two_are_two_facts_only_if_the_drill_is_another() {
        Group pair = group(Group.Kind.PAIR, "Ash", "Bo");
        assertEquals(
                List.of(
                        Entry.attended(DAY, "Ash"),
                        Entry.attended(DAY, "Bo"),
                        met("Ash", "thrust", "Bo"),
                        met("Ash", "parry", "Bo")),
                entries(
                        new Round(1, "thrust", List.of(pair)),
                        new Round(2, "thrust", List.of(pair)),
                        new Round(3, "parry", List.of(pair))));
    }
}
