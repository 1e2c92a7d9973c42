package org.drillwright.plan.proof;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** Walks the lines of a plan once more, by names alone, and counts what is said of them. */
public final class WalkRecount {

    /**
     * Two lines, by their posts.
     *
     * @param from the first round, counted from 1
     * @param to the last round
     * @param stays who stays
     * @param moves who is opposite in the first round
     * @param rest stands in a line for nobody
     */
    public record Line(int from, int to, List<String> stays, List<String> moves, String rest) {}

    private WalkRecount() {}

    /** Where the rounds are otherwise than the lines walk, one for each fault; empty if they are not. */
    public static List<String> faults(List<Line> lines, List<Recount.Sitting> rounds) {
        List<String> faults = new ArrayList<>();
        for (Line line : lines) {
            List<String> opposite = new ArrayList<>(line.moves());
            for (int round = line.from(); round <= line.to(); round++) {
                for (int post = 0; post < line.stays().size(); post++) {
                    String one = line.stays().get(post);
                    String other = opposite.get(post);
                    if (!isWorked(rounds.get(round - 1), one, other, line.rest())) {
                        faults.add("round " + round + ": " + one + " isn't with " + other);
                    }
                }
                opposite.add(0, opposite.remove(opposite.size() - 1));
            }
        }
        return faults;
    }

    /** Two are together; whoever is before nobody joins a pair or is alone. */
    private static boolean isWorked(Recount.Sitting round, String one, String other, String rest) {
        for (Recount.Together group : round.groups()) {
            Set<String> all = new HashSet<>(group.people());
            group.helper().ifPresent(all::add);
            boolean rests = one.equals(rest) || other.equals(rest);
            String left = one.equals(rest) ? other : one;
            if (rests ? all.contains(left) && all.size() != 2 : all.contains(one) && all.contains(other)) {
                return true;
            }
        }
        return false;
    }

    /** How often each of those who change line does. */
    public static Map<String, Integer> changes(List<Line> lines) {
        Map<String, Boolean> stays = new HashMap<>();
        Map<String, Integer> changes = new HashMap<>();
        for (Line line : lines) {
            line.stays().forEach(name -> change(name, true, line.rest(), stays, changes));
            line.moves().forEach(name -> change(name, false, line.rest(), stays, changes));
        }
        return changes;
    }

    private static void change(
            String name, boolean stay, String rest, Map<String, Boolean> stays, Map<String, Integer> changes) {
        Boolean before = stays.put(name, stay);
        if (before != null && before != stay && !name.equals(rest)) {
            changes.merge(name, 1, Integer::sum);
        }
    }

    /** For each round in which pairs meet that met before, which. */
    public static Map<Integer, Set<Set<String>>> again(List<Recount.Sitting> rounds) {
        Set<Set<String>> met = new HashSet<>();
        Map<Integer, Set<Set<String>>> again = new TreeMap<>();
        for (int round = 1; round <= rounds.size(); round++) {
            for (Recount.Together group : rounds.get(round - 1).groups()) {
                for (String other : group.people().subList(1, group.people().size())) {
                    Set<String> two = Set.of(group.people().get(0), other);
                    if (!met.add(two)) {
                        again.computeIfAbsent(round, one -> new HashSet<>()).add(two);
                    }
                }
            }
        }
        return again;
    }
}
