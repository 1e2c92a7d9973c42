package org.drillwright.plan.progress;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.Set;
import java.util.stream.Collectors;
import org.drillwright.plan.attendance.DrillDays;
import org.drillwright.plan.roster.Knowledge;

/** Who may be signed off in what, by what is on record: a proposal. Whether a drill is known, the instructor sees. */
public final class Ready {

    /** Days on which it was worked, days from the first to the last of them, partners: common practice, no source. */
    private static final int DAYS = 3;

    private static final int APART = 14;
    private static final int PARTNERS = 2;

    /** Weeks since it was worked last; common practice, no source. */
    private static final int FRESH = 6;

    private Ready() {}

    /** @param alone drills without partners */
    public static List<PersonDrill> of(
            List<String> people,
            List<String> drills,
            Set<String> alone,
            DrillDays worked,
            Knowledge knowledge,
            LocalDate today) {
        List<PersonDrill> ready = new ArrayList<>();
        for (String person : people) {
            for (String drill : drills) {
                if (!knowledge.knows(person, drill)
                        && isReady(worked.of(person, drill), alone.contains(drill), today)) {
                    ready.add(new PersonDrill(person, drill));
                }
            }
        }
        return ready;
    }

    private static boolean isReady(NavigableMap<LocalDate, Set<String>> days, boolean alone, LocalDate today) {
        if (days.size() < DAYS) {
            return false;
        }
        Set<String> partners = days.values().stream().flatMap(Set::stream).collect(Collectors.toSet());
        return (alone || partners.size() >= PARTNERS)
                && !days.firstKey().plusDays(APART).isAfter(days.lastKey())
                && !days.lastKey().plusWeeks(FRESH).isBefore(today);
    }
}
