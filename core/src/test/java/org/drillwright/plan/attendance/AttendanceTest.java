package org.drillwright.plan.attendance;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.drillwright.register.Entry;
import org.drillwright.register.History;
import org.junit.jupiter.api.Test;

/** By hand: (times there + 1) / (classes + 2) over the last eight on the weekday. */
class AttendanceTest {

    private static final LocalDate FIRST = LocalDate.of(2026, 9, 2);
    private static final LocalDate NEXT = FIRST.plusWeeks(9);

    /** Each with the weeks in which somebody came. */
    private static Attendance attendance(Map<String, List<Integer>> came) {
        List<Entry> entries = new ArrayList<>();
        came.forEach(
                (person, weeks) -> weeks.forEach(week -> entries.add(Entry.attended(FIRST.plusWeeks(week), person))));
        return Attendance.of(new History(entries), came.keySet());
    }

    private static final List<Integer> ALL = List.of(0, 1, 2, 3, 4, 5, 6, 7, 8);

    @Test
    void of_the_last_eight() {
        Attendance attendance = attendance(Map.of(
                "Ash", ALL,
                "Bo", List.of(0, 1, 2, 3, 5, 6, 8),
                "Cy", List.of(0),
                "Dee", List.of()));
        assertEquals(0.9, attendance.chance("Ash", NEXT), 1e-9);
        assertEquals(0.7, attendance.chance("Bo", NEXT), 1e-9, "six of eight");
        assertEquals(0.1, attendance.chance("Cy", NEXT), 1e-9, "none of eight");
        assertEquals(1.7 / 3, attendance.chance("Dee", NEXT), 1e-9, "new: the mean of those who came");
    }

    @Test
    void who_came_lately_isnt_asked_for_what_was_before() {
        Attendance attendance = attendance(Map.of("Ash", ALL, "Eli", List.of(6, 7, 8)));
        assertEquals(0.8, attendance.chance("Eli", NEXT), 1e-9, "three of three");
    }

    @Test
    void the_weekday_counts_once_three_classes_on_it_are_on_record() {
        List<Entry> entries = new ArrayList<>();
        for (int week : ALL) {
            entries.add(Entry.attended(FIRST.plusWeeks(week), "Ash"));
            entries.add(Entry.attended(FIRST.plusWeeks(week), "Bo"));
        }
        for (int week : List.of(6, 7, 8)) {
            entries.add(Entry.attended(FIRST.plusWeeks(week).plusDays(1), "Bo"));
        }
        Attendance attendance = Attendance.of(new History(entries), Set.of("Ash", "Bo"));
        assertEquals(0.2, attendance.chance("Ash", NEXT.plusDays(1)), 1e-9, "none of the three Thursdays");
        assertEquals(0.9, attendance.chance("Ash", NEXT), 1e-9);
        assertEquals(0.6, attendance.chance("Ash", NEXT.plusDays(2)), 1e-9, "Friday: five of the last eight of all");
    }

    @Test
    void with_nothing_on_record_everybody_is_expected() {
        assertEquals(1, Attendance.of(History.NONE, Set.of("Ash")).chance("Ash", NEXT));
    }

    @Test
    void a_drill_was_the_groups_if_half_of_those_who_came_worked_it() {
        List<Entry> entries = new ArrayList<>();
        for (String person : List.of("Ash", "Bo", "Cy", "Dee", "Eli")) {
            entries.add(Entry.attended(FIRST, person));
        }
        entries.add(Entry.workedWith(FIRST, "Ash", "parry", "Bo"));
        entries.add(Entry.workedWith(FIRST, "Cy", "parry", "Ash"));
        entries.add(Entry.workedWith(FIRST, "Eli", "thrust", "instructor"));
        History history = new History(entries);
        List<String> people = List.of("Ash", "Bo", "Cy", "Dee", "Eli");
        Attendance attendance = Attendance.of(history, people);
        DrillDays days = DrillDays.of(history);
        assertEquals(List.of(FIRST), days.ofGroup(people, "parry", attendance));
        assertEquals(List.of(), days.ofGroup(people, "thrust", attendance), "Eli caught up alone");
        assertEquals(Set.of("Bo", "Cy"), days.of("Ash", "parry").get(FIRST));
    }
}
