package org.drillwright.print.sheet.wall;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.drillwright.plan.pair.Group;
import org.drillwright.plan.pair.PairingPlan;
import org.drillwright.plan.pair.Round;
import org.drillwright.plan.roster.Naming;
import org.drillwright.tell.GroupWords;

/** Which helper watches which places, or posts, where two who are new work together. */
public final class Watching {

    private Watching() {}

    /** One sentence for all rounds in which the same watch the same places; none where nobody needs to. */
    static List<String> sentences(PairingPlan pairs, String place, Naming names) {
        Map<String, List<Integer>> rounds = new LinkedHashMap<>();
        pairs.rounds().stream()
                .skip(pairs.firstPlanned())
                .forEach(round -> rounds.computeIfAbsent(said(round, place, names), one -> new ArrayList<>())
                        .add(round.number()));
        return rounds.entrySet().stream()
                .filter(one -> !one.getKey().isEmpty())
                .map(one -> Runs.named("Round", one.getValue()) + ": " + one.getKey() + ".")
                .toList();
    }

    /** Who watches where in a round, such as {@code the instructor watches places 1 to 6, Marlow 7 to 12}. */
    public static String said(Round round, String place, Naming names) {
        Map<String, TreeSet<Integer>> places = new TreeMap<>();
        for (Group group : round.groups()) {
            group.eyes()
                    .ifPresent(eyes ->
                            places.computeIfAbsent(eyes, one -> new TreeSet<>()).add(group.place()));
        }
        List<Map.Entry<String, TreeSet<Integer>>> order = new ArrayList<>(places.entrySet());
        order.sort(Map.Entry.comparingByValue((one, other) -> one.first() - other.first()));
        return order.stream()
                .map(one -> GroupWords.helper(one.getKey(), names)
                        + (one == order.get(0) ? " watches " : " ")
                        + (one == order.get(0)
                                ? Runs.named(place, List.copyOf(one.getValue()))
                                : Runs.of(List.copyOf(one.getValue()))))
                .collect(Collectors.joining(", "));
    }
}
