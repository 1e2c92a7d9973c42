package org.drillwright.plan.kept;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillwright.mark.PlanMark;
import org.drillwright.plan.pair.Group;
import org.drillwright.plan.pair.Round;
import org.drillwright.plan.pair.Walk;
import org.drillwright.read.PlanReader;
import org.drillwright.read.Reading;
import org.drillwright.wording.Message;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A kept plan is read back as it was, and its mark is that of what it says. */
class KeptPlanTest {

    private static KeptPlan plan(Optional<PlanMark> after, String first, String second) {
        Group pair = new Group(Group.Kind.PAIR, 1, List.of(first, second), Optional.empty());
        Group helped = new Group(Group.Kind.HELPED, 2, List.of("Cy"), Optional.of("instructor"));
        Group solo = new Group(Group.Kind.SOLO, 0, List.of("Dee"), Optional.empty());
        return new KeptPlan(
                "tonight",
                LocalDate.of(2026, 9, 14),
                after,
                0,
                Map.of("thrust", "7K3M-P9RX"),
                List.of(first, second, "Cy", "Dee"),
                List.of("instructor"),
                List.of(new Round(1, "thrust", List.of(pair, helped, solo))),
                List.of());
    }

    private static Kept kept(KeptPlan plan) {
        return new Kept(plan.mark(PlanMark.SHORT), plan, Map.of("roster", "8f2c0a11"));
    }

    private static Reading<Kept> read(String text) {
        return PlanReader.read("plan.yaml", text.getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void it_is_a_file_that_a_person_can_read_and_change() {
        Kept kept = kept(plan(Optional.empty(), "Ash", "Bo"));
        assertEquals("""
                plan: 1
                mark: %s
                class: tonight
                date: 2026-09-14
                after: none
                worked: 0
                drills: {thrust: "7K3M-P9RX"}
                here: [Ash, Bo, Cy, Dee]
                helpers: [instructor]
                rounds:
                  - drill: thrust
                    groups:
                      - {post: 1, kind: pair, people: [Ash, Bo]}
                      - {post: 2, kind: helped, people: [Cy], helper: instructor}
                      - {kind: solo, people: [Dee]}
                made-from: {roster: "8f2c0a11"}
                """.formatted(kept.mark().shown()), KeptText.file(kept));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Ash",
                "Ann Oak",
                "d'Arc",
                "=1+1",
                "No",
                "a: b",
                "# x",
                "\"q\" \\ r",
                "Zoë",
                "1",
                "[x]",
                "-",
                "Ash, Bo",
                "李"
            })
    void any_name_is_read_back(String name) {
        Kept kept = kept(plan(Optional.of(PlanMark.of("before", PlanMark.SHORT)), name, "Bo"));
        Reading<Kept> reading = read(KeptText.file(kept));
        assertEquals(List.of(), reading.findings());
        assertEquals(Optional.of(kept), reading.value());
        assertTrue(reading.value().get().plan().fits(kept.mark()));
    }

    @Test
    void whatever_it_says_is_in_the_mark_and_what_it_was_made_from_is_not() {
        KeptPlan plan = plan(Optional.empty(), "Ash", "Bo");
        assertNotEquals(
                plan.mark(PlanMark.SHORT), plan(Optional.empty(), "Bo", "Ash").mark(PlanMark.SHORT));
        assertNotEquals(
                plan.mark(PlanMark.SHORT),
                plan(Optional.of(plan.mark(PlanMark.SHORT)), "Ash", "Bo").mark(PlanMark.SHORT));
        String changed = KeptText.file(kept(plan)).replace("[Ash, Bo]}", "[Ash, Dee]}");
        Kept copy = read(changed).value().orElseThrow();
        assertFalse(copy.plan().fits(copy.mark()));
        assertEquals(
                Optional.of("Dee stands twice in round 1"), copy.plan().fault().map(Message::english));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "plan: 1    | plan: 2      | This plan was saved by a later version of Drillwright (its form is 2).",
                "kind: solo | kind: alone  | unknown here",
                "after: none | after: K7QM-K | 'K7QM-K' is not the mark of a plan: one of its signs is wrong"
            })
    void what_cannot_be_read_is_a_finding(String was, String is, String said) {
        Reading<Kept> reading =
                read(KeptText.file(kept(plan(Optional.empty(), "Ash", "Bo"))).replace(was, is));
        assertTrue(reading.value().isEmpty());
        String what = reading.findings().get(0).what().english();
        assertTrue(what.contains(said), what);
    }

    /** The first is taken over twice, by two that don't know of each other; one of these is taken over again. */
    @Test
    void the_plan_that_holds_is_the_one_that_none_took_over_from() {
        Kept first = kept(plan(Optional.empty(), "Ash", "Bo"));
        Kept second = kept(plan(Optional.of(first.mark()), "Ash", "Eli"));
        Kept other = kept(plan(Optional.of(first.mark()), "Ash", "Fay"));
        Kept third = kept(plan(Optional.of(second.mark()), "Ash", "Bo"));
        assertEquals(List.of(first), new KeptPlans(List.of(first)).heads());
        assertEquals(List.of(second), new KeptPlans(List.of(first, second)).heads());
        assertEquals(List.of(second, other), new KeptPlans(List.of(first, second, other)).heads());
        KeptPlans all = new KeptPlans(List.of(first, second, other, third));
        assertEquals(List.of(other, third), all.heads());
        assertEquals(Optional.of(second), all.before(third));
        assertEquals(Optional.empty(), all.before(first));
    }

    /** Who watches whom, and who is in the middle of a three, stands in the file and comes back from it. */
    @Test
    void eyes_and_the_middle_of_a_three_are_kept() {
        Group watched = new Group(
                Group.Kind.WATCHED, 1, List.of("Ash", "Bo"), Optional.empty(), Optional.of("Marlow"), Optional.empty());
        Group three = new Group(
                Group.Kind.THREE,
                2,
                List.of("Cy", "Dee", "Eli"),
                Optional.empty(),
                Optional.empty(),
                Optional.of("Cy"));
        KeptPlan plan = new KeptPlan(
                "tonight",
                LocalDate.of(2026, 9, 14),
                Optional.empty(),
                0,
                Map.of(),
                List.of("Ash", "Bo", "Cy", "Dee", "Eli"),
                List.of("Marlow"),
                List.of(new Round(1, "thrust", List.of(watched, three))),
                List.of());
        String text = KeptText.file(kept(plan));
        assertTrue(text.contains("{post: 1, kind: watched, people: [Ash, Bo], eyes: Marlow}"), text);
        assertTrue(text.contains("{post: 2, kind: three, people: [Cy, Dee, Eli], middle: Cy}"), text);
        assertEquals(plan, read(text).value().orElseThrow().plan());
    }

    /** Two lines of two, the instructor in the second; a plan without them has the text, and so the mark, that it had. */
    @Test
    void the_lines_that_walk_are_kept() {
        KeptPlan read = plan(Optional.empty(), "Ash", "Bo");
        Walk walk = new Walk(1, 1, List.of("Ash", "Cy"), List.of("Bo", "instructor"));
        KeptPlan walked = new KeptPlan(
                read.named(),
                read.date(),
                read.after(),
                read.worked(),
                read.cards(),
                read.here(),
                read.helpers(),
                read.rounds(),
                List.of(walk));
        String text = KeptText.file(kept(walked));
        assertTrue(
                text.contains("walk:\n  - {from: 1, to: 1, stays: [Ash, Cy], moves: [Bo, instructor], way: up}\n"),
                text);
        assertEquals(walked, read(text).value().orElseThrow().plan());
        assertFalse(KeptText.file(kept(read)).contains("walk"));
    }
}
