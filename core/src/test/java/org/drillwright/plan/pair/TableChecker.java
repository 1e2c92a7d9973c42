package org.drillwright.plan.pair;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * Checks a table of partners written as text, {@code 1-6 2-5 3-4} for a round. It shares no code with the planner: it
 * reads names, and counts.
 */
final class TableChecker {

    private final Set<String> people;
    private final Set<String> fresh;
    private final Set<Set<String>> apart;
    private final Map<Set<String>, Integer> met = new HashMap<>();
    private final List<String> faults = new ArrayList<>();

    /**
     * @param people all who are to be in each round
     * @param fresh those who are new: no two of them may be together without one who isn't
     * @param apart names joined by a hyphen, kept from each other
     */
    TableChecker(Set<String> people, Set<String> fresh, String... apart) {
        this.people = people;
        this.fresh = fresh;
        this.apart = new HashSet<>();
        for (String pair : apart) {
            this.apart.add(Set.of(pair.split("-")));
        }
    }

    /** Looks at a round; the first faults of all rounds so far are kept. */
    TableChecker round(String round) {
        Set<String> seen = new TreeSet<>();
        for (String group : round.split(" ")) {
            List<String> names = Arrays.asList(group.split("-"));
            for (String name : names) {
                if (!people.contains(name)) {
                    faults.add(name + " isn't here");
                }
                if (!seen.add(name)) {
                    faults.add(name + " twice in " + round);
                }
            }
            pairs(names);
            if (names.size() > 1 && fresh.containsAll(names)) {
                faults.add("all new: " + group);
            }
        }
        if (!seen.containsAll(people)) {
            faults.add("somebody is lost in " + round);
        }
        return this;
    }

    private void pairs(List<String> names) {
        for (int one = 0; one < names.size(); one++) {
            for (int other = one + 1; other < names.size(); other++) {
                if (names.get(one).equals(names.get(other))) {
                    continue;
                }
                Set<String> pair = Set.of(names.get(one), names.get(other));
                met.merge(pair, 1, Integer::sum);
                if (apart.contains(pair)) {
                    faults.add("kept apart: " + pair);
                }
            }
        }
    }

    TableChecker rounds(String... rounds) {
        Arrays.stream(rounds).forEach(this::round);
        return this;
    }

    List<String> faults() {
        return faults;
    }

    /** How many pairs have met. */
    int pairs() {
        return met.size();
    }

    /** Meetings beyond each pair's first, the second counting 1, the third 2 more, and so on. */
    int repeats() {
        return met.values().stream().mapToInt(times -> times * (times - 1) / 2).sum();
    }

    int met(String one, String other) {
        return met.getOrDefault(Set.of(one, other), 0);
    }

    /** A plan's rounds as text. */
    static String[] text(PairingPlan plan) {
        return plan.rounds().stream()
                .map(round -> String.join(
                        " ",
                        round.groups().stream()
                                .map(group -> String.join("-", group.people())
                                        + group.helper()
                                                .map(helper -> "-" + helper)
                                                .orElse(""))
                                .toList()))
                .toArray(String[]::new);
    }
}
