package org.drillwright.plan.pair;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.drillwright.plan.rounds.Solution;

/** Says how people change over. */
final class WalkWords {

    private WalkWords() {}

    static List<String> of(PairingRequest request, Solution solution) {
        if (request.drills().size() < 2) {
            return List.of();
        }
        return solution.walk()
                .map(walk -> walked(request, solution, walk))
                .orElse(List.of("At each change everyone reads the sheet: there is no one movement for all."));
    }

    private static List<String> walked(PairingRequest request, Solution solution, Solution.Walk walk) {
        int rounds = solution.problem().rounds();
        String still = IntStream.range(0, request.students().size())
                .filter(student -> IntStream.range(0, rounds)
                                .map(round -> walk.place(round, student))
                                .distinct()
                                .count()
                        == 1)
                .mapToObj(student -> request.students().get(student).name())
                .collect(Collectors.joining(", "));
        return List.of(
                "Stand still: " + still + ".",
                switch (solution.method()) {
                    case TWO_LINES ->
                        "All others step one place down, from place 2 to place 1 and so on; whoever is at"
                                + " place 1 walks to the last place.";
                    case RING -> "All others move one place on round the ring.";
                    default ->
                        "All others move one place up, gaps too; whoever is at the last place walks to place 1."
                                + " Who has no partner at a place joins a pair as the sheet says, and comes back.";
                });
    }
}
