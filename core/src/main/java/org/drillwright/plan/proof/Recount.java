package org.drillwright.plan.proof;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
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
import org.drillwright.plan.roster.BothNew;
import org.drillwright.plan.roster.ClassPractice;
import org.drillwright.plan.roster.Knowledge;
import org.drillwright.plan.roster.Mode;
import org.drillwright.plan.roster.Person;
import org.drillwright.register.Entry;
import org.drillwright.register.Event;
import org.drillwright.register.History;

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
     * @param ways what may be done for those who have no partner
     */
    public record Asked(
            List<Person> students,
            List<String> helpers,
            List<Apart> apart,
            List<String> levels,
            Mode mode,
            Knowledge knowledge,
            Map<String, Hands> hands,
            ClassPractice ways,
            History history) {}

    /**
     * Who works together: two, or three of whom the first works with both others, or one and a helper, or one alone.
     *
     * @param helper if one does
     * @param eyes of somebody who watches, if somebody does
     */
    public record Together(List<String> people, Optional<String> helper, Optional<String> eyes) {}

    /** A round, with those who are left standing alone. */
    public record Sitting(String drill, List<Together> groups) {}

    private final Asked asked;
    private final boolean skilled;
    private final Map<String, Person> people = new HashMap<>();
    private final Map<Set<String>, Integer> met = new HashMap<>();
    private final Map<String, Integer> helped = new HashMap<>();
    private final Map<String, Integer> alone = new HashMap<>();
    private final Map<String, Integer> joined = new HashMap<>();
    private final Map<String, Integer> watched = new HashMap<>();
    private final Map<Set<String>, Long> past = new HashMap<>();
    private final long[] row = new long[11];

    private Recount(Asked asked) {
        this.asked = asked;
        asked.students().forEach(student -> people.put(student.name(), student));
        this.skilled =
                asked.students().stream().allMatch(person -> person.skill().isPresent());
        turnsHad();
        pastMeetings();
    }

    /**
     * What the planned rounds cost, in the order: hands that were asked for, repeats today, turns with helpers, as a third,
     * alone, watched, the sum of squared gaps, the largest gap, past meetings, levels, hands elsewhere.
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

    /** How many are alone, are thirds, have a helper, and how many meetings of two new ones a round has. */
    public static List<Integer> kinds(Asked asked, Sitting sitting) {
        int[] kinds = new int[4];
        for (Together group : sitting.groups()) {
            int size = group.people().size();
            kinds[0] += size == 1 && group.helper().isEmpty() ? 1 : 0;
            kinds[1] += size == 3 ? 1 : 0;
            kinds[2] += group.helper().isPresent() ? 1 : 0;
            kinds[3] += size > 1 && areNew(asked, group.people(), sitting.drill()) ? size - 1 : 0;
        }
        return List.of(kinds[0], kinds[1], kinds[2], kinds[3]);
    }

    private static boolean areNew(Asked asked, List<String> people, String drill) {
        return asked.mode() == Mode.LEARNING
                && people.stream().noneMatch(name -> asked.knowledge().knows(name, drill));
    }

    /** What is against the hard rules in a round, one for each fault; empty if nothing is. */
    public static List<String> faults(Asked asked, Sitting sitting) {
        List<String> faults = new ArrayList<>();
        Set<String> missing = new TreeSet<>();
        asked.students().forEach(student -> missing.add(student.name()));
        Set<String> busy = new HashSet<>();
        Map<String, Integer> watching = new HashMap<>();
        for (Together group : sitting.groups()) {
            group.people().stream().filter(name -> !missing.remove(name)).forEach(name -> faults.add(name + " twice"));
            group.helper().filter(name -> !busy.add(name)).ifPresent(name -> faults.add(name + " twice"));
            group.eyes().ifPresent(name -> watching.merge(name, 1, Integer::sum));
            List<String> all = new ArrayList<>(group.people());
            group.helper().ifPresent(all::add);
            group.eyes().ifPresent(all::add);
            for (Apart pair : asked.apart()) {
                if (all.contains(pair.one()) && all.contains(pair.other())) {
                    faults.add(pair.one() + " and " + pair.other() + " are kept apart");
                }
            }
            if (isUncovered(asked, group, sitting.drill())) {
                faults.add(String.join(" and ", group.people()) + " are new, and nobody watches");
            }
        }
        watching.forEach((name, posts) -> {
            if (busy.contains(name) || posts > asked.ways().eyes()) {
                faults.add(name + " can't watch " + posts);
            }
        });
        missing.forEach(name -> faults.add(name + " lost"));
        return faults;
    }

    /** New ones by themselves, unless somebody watches, or the instructor wants it so. */
    private static boolean isUncovered(Asked asked, Together group, String drill) {
        return group.people().size() > 1
                && areNew(asked, group.people(), drill)
                && (asked.ways().bothNew() == BothNew.NEVER
                        || (group.eyes().isEmpty() && asked.ways().bothNew() != BothNew.WANTED));
    }

    /** Day by day: so many turns were dealt to so many people, and each has had his own. */
    private void turnsHad() {
        Set<String> teach = new HashSet<>(asked.helpers());
        teach.add(History.INSTRUCTOR);
        Map<String, Long> thousandths = new HashMap<>();
        people.keySet().forEach(name -> thousandths.put(name, 0L));
        List<LocalDate> days =
                asked.history().entries().stream().map(Entry::date).distinct().toList();
        for (LocalDate day : days) {
            List<Entry> lines = asked.history().entries().stream()
                    .filter(entry -> entry.date().equals(day))
                    .filter(entry -> entry.event() == Event.ATTENDED || entry.event() == Event.WORKED_WITH)
                    .toList();
            Set<String> came = new HashSet<>();
            List<String> helpedThen = new ArrayList<>();
            for (Entry line : lines) {
                boolean pair = line.event() == Event.WORKED_WITH;
                came.add(line.person());
                if (pair) {
                    came.add(line.with());
                }
                if (pair && teach.contains(line.with()) && !teach.contains(line.person())) {
                    helpedThen.add(line.person());
                }
                if (pair && teach.contains(line.person()) && !teach.contains(line.with())) {
                    helpedThen.add(line.with());
                }
            }
            came.removeAll(teach);
            for (String name : came) {
                long share = (1_000L * helpedThen.size() + came.size() / 2) / came.size();
                thousandths.merge(name, 1_000L * Collections.frequency(helpedThen, name) - share, Long::sum);
            }
        }
        long least = people.keySet().stream()
                .mapToLong(name -> thousandths.getOrDefault(name, 0L))
                .min()
                .orElse(0);
        people.keySet()
                .forEach(name -> helped.put(name, (int)
                        Math.min(MOST_TURNS, (thousandths.getOrDefault(name, 0L) - least + 500) / 1_000)));
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

    /** A round that was worked already. */
    private void remember(Sitting sitting) {
        for (Together group : sitting.groups()) {
            List<String> people = group.people();
            for (String other : people.subList(1, people.size())) {
                met.merge(Set.of(people.get(0), other), 1, Integer::sum);
            }
            if (people.size() == 3) {
                joined.merge(people.get(2), 1, Integer::sum);
            }
            if (people.size() > 1 && areNew(asked, people.subList(0, 2), sitting.drill())) {
                people.subList(0, 2).forEach(name -> watched.merge(name, 1, Integer::sum));
            }
            if (people.size() == 1) {
                (group.helper().isPresent() ? helped : alone).merge(people.get(0), 1, Integer::sum);
            }
        }
    }

    private void count(Sitting sitting) {
        for (Together group : sitting.groups()) {
            List<String> people = group.people();
            if (people.size() > 1) {
                pair(people.get(0), people.get(1), sitting.drill());
                if (areNew(asked, people.subList(0, 2), sitting.drill())) {
                    people.subList(0, 2).forEach(name -> row[5] += watched.merge(name, 1, Integer::sum) - 1);
                }
            }
            if (people.size() == 3) {
                pair(people.get(0), people.get(2), sitting.drill());
                row[3] += joined.merge(people.get(2), 1, Integer::sum) - 1;
            }
            if (people.size() == 1 && group.helper().isPresent()) {
                row[2] += helped.merge(people.get(0), 1, Integer::sum) - 1;
            } else if (people.size() == 1) {
                row[4] += alone.merge(people.get(0), 1, Integer::sum) - 1;
            }
        }
    }

    private void pair(String one, String other, String drill) {
        row[1] += met.merge(Set.of(one, other), 1, Integer::sum) - 1;
        row[8] += Math.min(MOST_PAST, past.getOrDefault(Set.of(one, other), 0L));
        like(person(one), person(other));
        hands(person(one), person(other), asked.hands().get(drill) == Hands.OPPOSITE);
    }

    private Person person(String name) {
        return Optional.ofNullable(people.get(name)).orElseThrow();
    }

    private void like(Person one, Person other) {
        if (asked.mode() == Mode.TRAINING) {
            long gap = Math.min(MOST_GAP, gap(one, other));
            row[6] += gap * gap;
            row[7] = Math.max(row[7], gap);
        } else {
            row[9] += Math.min(MOST_LEVELS, levels(one, other));
        }
    }

    private long gap(Person one, Person other) {
        return skilled ? Math.abs(one.skill().getAsInt() - other.skill().getAsInt()) : levels(one, other);
    }

    private long levels(Person one, Person other) {
        int first = one.level().map(asked.levels()::indexOf).orElse(-1);
        int second = other.level().map(asked.levels()::indexOf).orElse(-1);
        return first >= 0 && second >= 0 ? Math.abs(first - second) : 0;
    }

    /** Asked for is left against right; where nothing is, hands of one side are better. */
    private void hands(Person one, Person other, boolean opposite) {
        if (one.hand().isPresent() && other.hand().isPresent()) {
            boolean same = one.hand().equals(other.hand());
            row[0] += opposite && same ? 1 : 0;
            row[10] += !opposite && !same ? 1 : 0;
        }
    }
}
