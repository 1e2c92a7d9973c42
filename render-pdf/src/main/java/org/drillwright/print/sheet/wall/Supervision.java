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
import org.drillwright.plan.pair.Watch;
import org.drillwright.plan.roster.Naming;

/** Which helper watches which places, or posts, where two who are new work together; and that they do so by choice. */
public final class Supervision {

    private Supervision() {}

    /**
     * That two new ones work together is no slip.
     *
     * @param title of the drill; empty where there is no other
     */
    public static String choice(Watch watch, String title, WallTexts words) {
        return title.isEmpty()
                ? watch.sentence().sentence().in(words.locale())
                : words.text(WallText.CHOICE, title, watch.sentence().in(words.locale()));
    }

    /** One sentence for all rounds in which the same watch the same places; none where nobody needs to. */
    static List<String> sentences(PairingPlan pairs, PlaceKind spot, Naming names, WallTexts words) {
        Map<String, List<Integer>> rounds = new LinkedHashMap<>();
        pairs.rounds().stream()
                .skip(pairs.firstPlanned())
                .forEach(round -> rounds.computeIfAbsent(said(round, spot, names, words), one -> new ArrayList<>())
                        .add(round.number()));
        return rounds.entrySet().stream()
                .filter(one -> !one.getKey().isEmpty())
                .map(one -> Runs.named(WallText.AT_ROUND, WallText.AT_ROUNDS, one.getValue(), words) + " "
                        + one.getKey() + ".")
                .toList();
    }

    /** Who watches where in a round, such as {@code the instructor watches places 1 to 6, Marlow 7 to 12}. */
    public static String said(Round round, PlaceKind spot, Naming names, WallTexts words) {
        Map<String, TreeSet<Integer>> places = new TreeMap<>();
        for (Group group : round.groups()) {
            group.eyes()
                    .ifPresent(eyes ->
                            places.computeIfAbsent(eyes, one -> new TreeSet<>()).add(group.place()));
        }
        List<Map.Entry<String, TreeSet<Integer>>> order = new ArrayList<>(places.entrySet());
        order.sort(Map.Entry.comparingByValue((one, other) -> one.first() - other.first()));
        return order.stream()
                .map(one -> words.text(
                        word(spot, one == order.get(0), one.getValue().size() == 1),
                        words.helper(one.getKey(), names),
                        Runs.of(List.copyOf(one.getValue()), words)))
                .collect(Collectors.joining(", "));
    }

    private static WallText word(PlaceKind spot, boolean isFirst, boolean isOne) {
        return switch (spot) {
            case PLACE ->
                isFirst
                        ? isOne ? WallText.WATCHES_PLACE : WallText.WATCHES_PLACES
                        : isOne ? WallText.ALSO_PLACE : WallText.ALSO_PLACES;
            case POST ->
                isFirst
                        ? isOne ? WallText.WATCHES_POST : WallText.WATCHES_POSTS
                        : isOne ? WallText.ALSO_POST : WallText.ALSO_POSTS;
        };
    }
}
