package org.drillwright.plan.proof;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.drillwright.model.Hands;
import org.drillwright.plan.roster.Apart;
import org.drillwright.plan.roster.Hand;
import org.drillwright.plan.roster.Knowledge;
import org.drillwright.plan.roster.Mode;
import org.drillwright.plan.roster.Person;
import org.drillwright.record.Entry;
import org.drillwright.record.Event;
import org.drillwright.record.History;

/**
 * Counts a plan from its names alone: who is lost or stands twice, which pairs may not be, and what it costs, aim by aim. It
 * shares nothing with the code that finds plans, so a slip in that is seen here.
 */
public final class Recount {

    /** Costs of a pair never go beyond these. */
    private static final int MOST_PAST = 9;

    private static final int MOST_TURNS = 9;
    private static final int MOST_LEVELS = 3;
    private static final int MOST_GAP = 99;

    /** The last class counts 4, the one before 3, and so on down to 1. */
    private static final int RECENT = 4;

    /**
     * What a plan was asked for.
     *
     * @param students those who work in pairs
     * @param helpers those who may work with one of them
     * @param levels the lowest first
     * @param hands what drills ask of partners' hands
     */
    public record Asked(
            List<Person> students,
            List<String> helpers,
            List<Apart> apart,
            List<String> levels,
            Mode mode,
            Knowledge knowledge,
            Map<String, Hands> hands,
            History history) {}

    /**
     * Who works together: two, or one and a helper, or one alone.
     *
     * @param helper if one does
     */
    public record Together(List<String> people, Optional<String> helper) {}

    /** A round, with those who are left standing alone. */
    public record Sitting(String drill, List<Together> groups) {}

    private final Asked asked;
    private final boolean skilled;
    private final Map<String, Person> people = new HashMap<>();
    private final Map<Set<String>, Integer> met = new HashMap<>();
    private final Map<String, Integer> helped = new HashMap<>();
    private final Map<String, Integer> alone = new HashMap<>();
    private final Map<Set<String>, Long> past = new HashMap<>();
    private final long[] row = new long[8];

    private Recount(Asked asked) {
        this.asked = asked;
        asked.students().forEach(student -> people.put(student.name(), student));
        this.skilled =
                asked.students().stream().allMatch(person -> person.skill().isPresent());
        turnsHad();
        pastMeetings();
    }

    /**
     * What the planned rounds cost, in the order: repeats today, turns with helpers, turns alone, the sum of gaps, the
     * largest gap, past meetings, levels, hands.
     *
     * @param played rounds before them
     */
    public static List<Long> row(Asked asked, List<Sitting> played, List<Sitting> planned) {
        Recount recount = new Recount(asked);
        played.forEach(recount::remember);
        planned.forEach(recount::count);
        List<Long> row = new ArrayList<>();
        for (long cost : recount.row) {
            row.add(cost);
        }
        return row;
    }

    /** What is against the hard rules in a round, one for each fault; empty if nothing is. */
    public static List<String> faults(Asked asked, Sitting sitting) {
        List<String> faults = new ArrayList<>();
        Set<String> missing = new TreeSet<>();
        asked.students().forEach(student -> missing.add(student.name()));
        Set<String> busy = new HashSet<>();
        for (Together group : sitting.groups()) {
            group.people().stream().filter(name -> !missing.remove(name)).forEach(name -> faults.add(name + " twice"));
            group.helper().filter(name -> !busy.add(name)).ifPresent(name -> faults.add(name + " twice"));
            List<String> all = new ArrayList<>(group.people());
            group.helper().ifPresent(all::add);
            for (Apart pair : asked.apart()) {
                if (all.contains(pair.one()) && all.contains(pair.other())) {
                    faults.add(pair.one() + " and " + pair.other() + " are kept apart");
                }
            }
        }
        missing.forEach(name -> faults.add(name + " lost"));
        return faults;
    }

    private void turnsHad() {
        Set<String> teach = new HashSet<>(asked.helpers());
        teach.add(History.INSTRUCTOR);
        Map<String, Integer> turns = new HashMap<>();
        for (Entry entry : meetings()) {
            if (teach.contains(entry.with())) {
                turns.merge(entry.person(), 1, Integer::sum);
            } else if (teach.contains(entry.person())) {
                turns.merge(entry.with(), 1, Integer::sum);
            }
        }
        int least = people.keySet().stream()
                .mapToInt(name -> turns.getOrDefault(name, 0))
                .min()
                .orElse(0);
        people.keySet().forEach(name -> helped.put(name, Math.min(MOST_TURNS, turns.getOrDefault(name, 0) - least)));
    }

    private void pastMeetings() {
        List<LocalDate> days = meetings().stream()
                .map(Entry::date)
                .distinct()
                .sorted(Comparator.reverseOrder())
                .toList();
        for (Entry entry : meetings()) {
            if (!entry.person().equals(entry.with())) {
                long weight = Math.max(1, RECENT - days.indexOf(entry.date()));
                past.merge(Set.of(entry.person(), entry.with()), weight, Long::sum);
            }
        }
    }

    private List<Entry> meetings() {
        return asked.history().entries().stream()
                .filter(entry -> entry.event() == Event.WORKED_WITH)
                .toList();
    }

    /** A round that was worked already: all of a three have met. */
    private void remember(Sitting sitting) {
        for (Together group : sitting.groups()) {
            for (String one : group.people()) {
                group.people().stream()
                        .filter(other -> one.compareTo(other) < 0)
                        .forEach(other -> met.merge(Set.of(one, other), 1, Integer::sum));
            }
            if (group.people().size() == 1) {
                (group.helper().isPresent() ? helped : alone)
                        .merge(group.people().get(0), 1, Integer::sum);
            }
        }
    }

    private void count(Sitting sitting) {
        for (Together group : sitting.groups()) {
            String one = group.people().get(0);
            if (group.people().size() == 2) {
                pair(one, group.people().get(1));
            } else if (group.helper().isPresent()) {
                row[1] += helped.merge(one, 1, Integer::sum) - 1;
            } else {
                row[2] += alone.merge(one, 1, Integer::sum) - 1;
            }
        }
    }

    private void pair(String one, String other) {
        row[0] += met.merge(Set.of(one, other), 1, Integer::sum) - 1;
        row[5] += Math.min(MOST_PAST, past.getOrDefault(Set.of(one, other), 0L));
        like(person(one), person(other));
    }

    private Person person(String name) {
        return Optional.ofNullable(people.get(name)).orElseThrow();
    }

    private void like(Person one, Person other) {
        if (asked.mode() == Mode.TRAINING) {
            long gap = Math.min(MOST_GAP, gap(one, other));
            row[3] += gap;
            row[4] = Math.max(row[4], gap);
        } else {
            row[6] += Math.min(MOST_LEVELS, levels(one, other));
        }
        row[7] += hands(one, other);
    }

    private long gap(Person one, Person other) {
        return skilled ? Math.abs(one.skill().getAsInt() - other.skill().getAsInt()) : levels(one, other);
    }

    private long levels(Person one, Person other) {
        int first = one.level().map(asked.levels()::indexOf).orElse(-1);
        int second = other.level().map(asked.levels()::indexOf).orElse(-1);
        return first >= 0 && second >= 0 ? Math.abs(first - second) : 0;
    }

    private long hands(Person one, Person other) {
        Set<Hands> wanted = new HashSet<>(asked.hands().values());
        Optional<Hand> first = one.hand();
        Optional<Hand> second = other.hand();
        if (wanted.size() != 1 || first.isEmpty() || second.isEmpty()) {
            return 0;
        }
        return wanted.contains(Hands.SAME) == first.equals(second) ? 0 : 1;
    }
}
