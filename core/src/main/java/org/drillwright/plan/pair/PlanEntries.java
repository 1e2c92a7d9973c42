package org.drillwright.plan.pair;

import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.drillwright.record.Entry;

/** What a class that was worked as planned adds to the record. */
public final class PlanEntries {

    private PlanEntries() {}

    /** Who attended, then who worked with whom on what, each once. */
    public static List<Entry> of(PairingPlan plan, LocalDate date) {
        Set<Entry> entries = new LinkedHashSet<>();
        plan.rounds()
                .forEach(round -> round.groups()
                        .forEach(group -> group.people().forEach(person -> entries.add(Entry.attended(date, person)))));
        for (Round round : plan.rounds()) {
            for (Group group : round.groups()) {
                meetings(round, group, date, entries);
            }
        }
        return List.copyOf(entries);
    }

    private static void meetings(Round round, Group group, LocalDate date, Set<Entry> entries) {
        List<String> people = group.people();
        for (int one = 0; one < people.size(); one++) {
            for (String other : people.subList(one + 1, people.size())) {
                entries.add(Entry.workedWith(date, people.get(one), round.drill(), other));
            }
            String person = people.get(one);
            group.helper().ifPresent(helper -> entries.add(Entry.workedWith(date, person, round.drill(), helper)));
        }
    }
}
