package org.drillwright.plan.schedule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.drillwright.model.Drill;
import org.drillwright.plan.course.Goal;
import org.drillwright.register.Entry;
import org.junit.jupiter.api.Test;

/** A term of twelve weeks with people who come and go. */
class PlayedTermTest {

    private static final PlayedTerm PLAYED = PlayedTerm.of(7);

    private static List<ClassRow> rows(TermPlan plan) {
        return plan.groups().get(0).classes();
    }

    private static List<String> ids(List<Taught> taught) {
        return taught.stream().map(Taught::drill).toList();
    }

    @Test
    void the_same_files_give_the_same_plans() {
        assertEquals(PLAYED.plans, PlayedTerm.of(7).plans);
    }

    @Test
    void what_was_stays_as_it_was() {
        for (int week = 1; week < PLAYED.plans.size(); week++) {
            List<ClassRow> before = rows(PLAYED.plans.get(week)).subList(0, week);
            for (TermPlan later : PLAYED.plans.subList(week, PLAYED.plans.size())) {
                assertEquals(before, rows(later).subList(0, week));
            }
        }
    }

    /** Looked at in what was worked, not in what was planned. */
    @Test
    void each_class_keeps_its_time_and_each_drill_comes_behind_what_it_needs() {
        Map<String, Drill> drills = PlayedTerm.drills();
        Set<String> known = new HashSet<>();
        for (ClassRow row : rows(PLAYED.plans.get(12))) {
            assertTrue(row.over());
            assertTrue(row.used() <= row.minutes(), row.toString());
            assertTrue(row.asNew().size() <= 2, row.toString());
            ids(row.again()).forEach(drill -> assertTrue(known.contains(drill), drill));
            ids(row.asNew()).forEach(drill -> {
                assertTrue(known.containsAll(drills.get(drill).needs()), drill);
                assertFalse(known.contains(drill), drill);
            });
            known.addAll(ids(row.asNew()));
        }
        assertEquals(drills.keySet(), known, "all of them were taught");
    }

    @Test
    void the_exam_is_reached_although_classes_ran_over() {
        assertEquals(0, PLAYED.plans.get(12).groups().get(0).missing());
    }

    /** What was published is changed only for a gain, and the change is told. */
    @Test
    void changes_gain_something() {
        for (int week = 1; week < 12; week++) {
            GroupPlan group = PLAYED.plans.get(week).groups().get(0);
            long changed = group.found().orElseThrow().row().of(Goal.CHANGED);
            assertEquals(changed > 0, !group.changed().isEmpty());
        }
        TermPlan again = PlayedTerm.plan(
                PLAYED.record.stream()
                        .filter(entry -> entry.date().isBefore(PlayedTerm.FIRST.plusWeeks(6)))
                        .toList(),
                PlayedTerm.FIRST.plusWeeks(6),
                Optional.of(PLAYED.plans.get(6).toPublish()));
        assertEquals(List.of(), again.groups().get(0).changed(), "planned once more from the same");
        assertEquals(PLAYED.plans.get(6).toPublish(), again.toPublish());
    }

    /** Half of the group stays away in three weeks that were otherwise as they were. */
    @Test
    void who_came_moves_what_is_to_come_and_never_what_was() {
        LocalDate today = PlayedTerm.FIRST.plusWeeks(6);
        List<Entry> before = new ArrayList<>();
        List<Entry> without = new ArrayList<>();
        for (Entry entry : PLAYED.record) {
            if (entry.date().isBefore(today)) {
                before.add(entry);
                boolean gone = !entry.date().isBefore(today.minusWeeks(3)) && isGone(entry.person());
                if (!gone && !(entry.date().isAfter(today.minusWeeks(4)) && isGone(entry.with()))) {
                    without.add(entry);
                }
            }
        }
        TermPlan one = PlayedTerm.plan(before, today, Optional.empty());
        TermPlan other = PlayedTerm.plan(without, today, Optional.empty());
        for (int week = 0; week < 6; week++) {
            assertEquals(
                    ids(rows(one).get(week).asNew()), ids(rows(other).get(week).asNew()));
            assertEquals(
                    ids(rows(one).get(week).again()), ids(rows(other).get(week).again()));
        }
        assertNotEquals(rows(one).subList(6, 12), rows(other).subList(6, 12));
        assertTrue(rows(other).get(6).expected() < rows(one).get(6).expected());
    }

    private static boolean isGone(String person) {
        return !person.isEmpty() && Integer.parseInt(person.substring(1)) % 2 == 0;
    }

    /** Three days of work, a fortnight from first to last, two partners, not longer ago than six weeks: by hand. */
    @Test
    void who_may_be_signed_off_has_worked_enough() {
        GroupPlan group = PLAYED.plans.get(12).groups().get(0);
        assertFalse(group.ready().isEmpty());
        for (var ready : group.ready()) {
            List<Entry> worked = PLAYED.record.stream()
                    .filter(entry -> entry.drill().equals(ready.drill()))
                    .filter(entry -> entry.person().equals(ready.person())
                            || entry.with().equals(ready.person()))
                    .toList();
            List<LocalDate> days =
                    worked.stream().map(Entry::date).distinct().sorted().toList();
            assertTrue(days.size() >= 3, ready.toString());
            assertTrue(days.get(0).plusDays(14).compareTo(days.get(days.size() - 1)) <= 0, ready.toString());
            assertTrue(days.get(days.size() - 1).plusWeeks(6).compareTo(PlayedTerm.FIRST.plusWeeks(12)) >= 0);
        }
    }
}
