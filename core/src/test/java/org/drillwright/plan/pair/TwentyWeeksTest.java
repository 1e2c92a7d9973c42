package org.drillwright.plan.pair;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.drillwright.register.Entry;
import org.junit.jupiter.api.Test;

/** Turns with the instructor over many weeks: nine people, so one a round, eight rounds a week, each week recorded. */
class TwentyWeeksTest {

    private static final LocalDate FIRST = LocalDate.of(2026, 1, 7);
    private static final List<String> PEOPLE = List.of("Ash", "Bo", "Cy", "Dee", "Eli", "Fay", "Gus", "Hal", "Ivy");

    private final List<Entry> record = new ArrayList<>();
    private final Map<String, Integer> turns = new TreeMap<>();

    /** What the plan says is recorded; the turns of that week. */
    private Map<String, Integer> week(int week, List<String> people) {
        Classes classes = Classes.of(Classes.named(Set.of(Classes.DRILL), people.toArray(new String[0])))
                .rounds(8);
        record.forEach(classes::past);
        LocalDate day = FIRST.plusWeeks(week);
        Map<String, Integer> then = new TreeMap<>();
        people.forEach(name -> record.add(Entry.attended(day, name)));
        for (Round round : classes.plan().rounds()) {
            for (Group group : round.groups()) {
                String one = group.people().get(0);
                group.helper().ifPresent(helper -> {
                    then.merge(one, 1, Integer::sum);
                    record.add(Entry.workedWith(day, one, Classes.DRILL, helper));
                });
                if (group.people().size() == 2) {
                    record.add(Entry.workedWith(
                            day, one, Classes.DRILL, group.people().get(1)));
                }
            }
        }
        then.forEach((name, count) -> turns.merge(name, count, Integer::sum));
        return then;
    }

    private int spread(List<String> people) {
        List<Integer> had =
                people.stream().map(name -> turns.getOrDefault(name, 0)).toList();
        return Collections.max(had) - Collections.min(had);
    }

    /** 8 turns for 9: whoever lacks one gets it the next week. */
    @Test
    void turns_never_part_by_more_than_one() {
        for (int week = 0; week < 20; week++) {
            Map<String, Integer> then = week(week, PEOPLE);
            assertTrue(spread(PEOPLE) <= 1, "week " + week + ": " + then + " of " + turns);
        }
    }

    /** Zed comes for Ivy in week 6. */
    @Test
    void a_newcomer_pays_for_nobody_else() {
        for (int week = 0; week < 6; week++) {
            week(week, PEOPLE);
        }
        List<String> others = new ArrayList<>(PEOPLE.subList(0, 8));
        others.add("Zed");
        int before = turns.values().stream().mapToInt(Integer::intValue).sum();
        assertTrue(before == 48, "8 a week");
        for (int week = 6; week < 10; week++) {
            int then = week(week, others).getOrDefault("Zed", 0);
            assertTrue(then <= 2, "Zed had " + then + " of the 8 turns of week " + week);
        }
        int zed = turns.getOrDefault("Zed", 0);
        assertTrue(zed >= 3 && zed <= 5, "32 turns for 9 are 3.6 for each; Zed had " + zed);
    }
}
