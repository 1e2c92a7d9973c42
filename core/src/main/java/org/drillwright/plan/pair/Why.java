package org.drillwright.plan.pair;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.drillwright.plan.rounds.Aim;
import org.drillwright.plan.rounds.Solution;
import org.drillwright.plan.rounds.Tally;

/** Tells why two meet or don't, by trying the other way. */
final class Why {

    private final PairingRequest request;
    private final Solution solution;
    private final PairingPlan plan;

    Why(PairingRequest request, Solution solution, PairingPlan plan) {
        this.request = request;
        this.solution = solution;
        this.plan = plan;
    }

    List<String> of(String one, String other) {
        for (String name : List.of(one, other)) {
            if (number(name) < 0) {
                return List.of(name + " doesn't work in a pair in the rounds planned.");
            }
        }
        if (one.equals(other)) {
            return List.of("That is the same person.");
        }
        List<Integer> met = plan.rounds().stream()
                .filter(round -> round.joins(one, other))
                .map(Round::number)
                .toList();
        List<String> why = new ArrayList<>(between(one, other));
        why.addAll(met.isEmpty() ? apart(one, other) : together(one, other, met));
        return why;
    }

    private List<String> between(String one, String other) {
        return plan.rounds().stream()
                .filter(round -> round.groups().stream()
                        .anyMatch(group -> group.holds(one) && group.holds(other) && !group.joins(one, other)))
                .map(round -> "They are in the same three in round " + round.number()
                        + ", but each works with the one in the middle.")
                .toList();
    }

    private int number(String name) {
        return IntStream.range(0, request.students().size())
                .filter(at -> request.students().get(at).name().equals(name))
                .findFirst()
                .orElse(-1);
    }

    private List<String> together(String one, String other, List<Integer> met) {
        List<String> why = new ArrayList<>();
        why.add("They work together in round "
                + met.stream().map(String::valueOf).collect(Collectors.joining(", ")) + ".");
        for (int number : met) {
            int round = number - 1 - plan.firstPlanned();
            String which = "Round " + number + ": ";
            if (round < 0) {
                why.add(which + "it has already been worked.");
            } else {
                Optional<Tally> otherwise = solution.parted(round, number(one), number(other));
                why.add(which
                        + otherwise
                                .map(tally -> compared("separating them", tally))
                                .orElse("the round can't be filled without these two as a pair."));
            }
        }
        return why;
    }

    private List<String> apart(String one, String other) {
        if (request.apart().stream().anyMatch(pair -> pair.parts(one, other))) {
            return List.of("They are kept apart: the roster says so.");
        }
        List<String> why = new ArrayList<>();
        List<String> drills = request.open().stream().distinct().toList();
        List<String> bothNew = drills.stream()
                .filter(drill -> !solution.problem().permits(request.open().indexOf(drill), number(one), number(other)))
                .toList();
        if (!bothNew.isEmpty()) {
            why.add("Both are new to " + String.join(", ", bothNew) + ", so neither could help the other.");
        }
        if (bothNew.size() < drills.size()) {
            why.add(ifTogether(number(one), number(other)));
        }
        return why;
    }

    private String ifTogether(int one, int other) {
        Optional<Tally> best = Optional.empty();
        int at = 0;
        for (int round = 0; round < request.open().size(); round++) {
            Optional<Tally> tried = solution.together(round, one, other);
            if (tried.isPresent() && (best.isEmpty() || tried.get().compareTo(best.get()) < 0)) {
                best = tried;
                at = round;
            }
        }
        String round = "Putting them together in round " + (plan.firstPlanned() + at + 1);
        return best.map(tally -> "They could meet. " + compared(round, tally))
                .orElse("If they worked together, no round could be filled with permitted pairs.");
    }

    private String compared(String change, Tally tally) {
        Optional<Aim> aim = tally.firstDifference(solution.cost());
        if (aim.isEmpty()) {
            return change + " would be just as good (the roster's order decided).";
        }
        long more = tally.of(aim.get()) - solution.cost().of(aim.get());
        if (more < 0) {
            return change + " would be better by " + -more + " in " + aim.get().words()
                    + (plan.method().isWalked()
                            ? ", but then people couldn't change over by walking."
                            : "; the search stopped before it found that.");
        }
        return change + " would be worse by " + more + " in " + aim.get().words()
                + ", and no better in anything more important.";
    }
}
