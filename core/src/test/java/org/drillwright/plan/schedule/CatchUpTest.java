package org.drillwright.plan.schedule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drillwright.plan.progress.PersonDrill;
import org.drillwright.register.Entry;
import org.junit.jupiter.api.Test;

/** By hand. */
class CatchUpTest {

    private static final LocalDate FIRST = PlayedTerm.FIRST;

    private static List<Entry> worked(int week, String drill, List<String> people) {
        List<Entry> entries = new ArrayList<>();
        people.forEach(person -> entries.add(Entry.attended(FIRST.plusWeeks(week), person)));
        for (int at = 1; at < people.size(); at++) {
            entries.add(Entry.workedWith(FIRST.plusWeeks(week), people.get(at), drill, people.get(at - 1)));
        }
        return entries;
    }

    /** P23 misses what is new in the first class and comes to the second: new to it there, and open after one class no more. */
    @Test
    void who_missed_an_introduction_is_new_at_the_review() {
        List<String> people = PlayedTerm.roster().names();
        List<Entry> record = worked(0, "thrust", people.subList(0, 23));
        TermPlan plan = PlayedTerm.plan(record, FIRST.plusWeeks(1), Optional.empty());
        GroupPlan group = plan.groups().get(0);
        CatchUp missed = group.catchUps().get(0);
        assertEquals(new CatchUp("thrust", List.of("P23"), Optional.of(FIRST.plusWeeks(1)), missed.needed()), missed);
        assertEquals(
                List.of(new PersonDrill("P23", "thrust")),
                group.classes().get(1).lacking());
        List<Entry> then = new ArrayList<>(record);
        then.addAll(worked(1, "thrust", people));
        assertEquals(
                List.of(),
                PlayedTerm.plan(then, FIRST.plusWeeks(2), Optional.empty())
                        .groups()
                        .get(0)
                        .catchUps());
    }

    @Test
    void what_a_quarter_lack_and_what_is_needed_next_is_worked_by_all() {
        List<String> people = PlayedTerm.roster().names();
        List<Entry> record = new ArrayList<>(worked(0, "thrust", people));
        record.addAll(worked(1, "thrust", people));
        record.addAll(worked(2, "sixte", people.subList(0, 17)));
        TermPlan plan = PlayedTerm.plan(record, FIRST.plusWeeks(3), Optional.empty());
        ClassRow next = plan.groups().get(0).classes().get(3);
        assertTrue(next.again().stream().anyMatch(taught -> taught.drill().equals("sixte")), next.toString());
    }
}
