package org.drillwright.plan.pair;

import java.util.List;
import java.util.stream.Collectors;
import org.drillwright.plan.rounds.Method;

/** Says how people change over. */
final class WalkWords {

    private WalkWords() {}

    static List<String> of(Method method, List<Round> rounds) {
        if (rounds.size() < 2) {
            return List.of();
        }
        if (!method.isWalked()) {
            return List.of("At each change everyone reads the sheet: there is no one movement for all.");
        }
        String still = rounds.get(0).groups().stream()
                .flatMap(group -> group.people().stream().filter(person -> stands(person, rounds)))
                .collect(Collectors.joining(", "));
        return List.of(
                "Stand still: " + still + ".",
                switch (method) {
                    case TWO_LINES -> "The others step one place on, to the next higher number; whoever is at the last"
                            + " place walks to place 1.";
                    case RING -> "The others move one place on round the ring.";
                    default -> "The others move one place on round the ring, gaps too; whoever is at the last place"
                            + " walks to place 1.";
                });
    }

    private static boolean stands(String person, List<Round> rounds) {
        long places = rounds.stream()
                .flatMap(round -> round.groupOf(person).stream())
                .map(Group::place)
                .filter(place -> place > 0)
                .distinct()
                .count();
        return places == 1;
    }
}
