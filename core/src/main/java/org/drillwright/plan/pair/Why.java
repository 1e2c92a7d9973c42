package org.drillwright.plan.pair;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.drillwright.plan.rounds.CostVector;
import org.drillwright.plan.rounds.Objective;
import org.drillwright.plan.rounds.Solution;
import org.drillwright.wording.Message;

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

    List<Message> of(String one, String other) {
        for (String name : List.of(one, other)) {
            if (number(name) < 0) {
                return List.of(said("why.no.pair", name));
            }
        }
        if (one.equals(other)) {
            return List.of(said("why.same"));
        }
        List<Integer> met = plan.rounds().stream()
                .filter(round -> round.joins(one, other))
                .map(Round::number)
                .toList();
        List<Message> why = new ArrayList<>(between(one, other));
        why.addAll(met.isEmpty() ? apart(one, other) : together(one, other, met));
        return why;
    }

    private List<Message> between(String one, String other) {
        return plan.rounds().stream()
                .filter(round -> round.groups().stream()
                        .anyMatch(group -> group.holds(one) && group.holds(other) && !group.joins(one, other)))
                .map(round -> said("why.three", round.number()))
                .toList();
    }

    private int number(String name) {
        return IntStream.range(0, request.students().size())
                .filter(at -> request.students().get(at).name().equals(name))
                .findFirst()
                .orElse(-1);
    }

    private List<Message> together(String one, String other, List<Integer> met) {
        List<Message> why = new ArrayList<>();
        why.add(Message.counted(
                Why.class,
                "why.together",
                met.size(),
                Message.words(met.stream().map(String::valueOf).toList())));
        for (int number : met) {
            int round = number - 1 - plan.firstPlanned();
            if (round < 0) {
                why.add(said("why.worked", number));
            } else {
                Optional<CostVector> otherwise = solution.parted(round, number(one), number(other));
                why.add(otherwise
                        .map(tally -> compared("part", number, tally))
                        .orElseGet(() -> said("why.needed", number)));
            }
        }
        return why;
    }

    private List<Message> apart(String one, String other) {
        if (request.apart().stream().anyMatch(pair -> pair.parts(one, other))) {
            return List.of(said("why.apart"));
        }
        List<Message> why = new ArrayList<>();
        List<String> drills = request.open().stream().distinct().toList();
        List<String> bothNew = drills.stream()
                .filter(drill -> !solution.problem().permits(request.open().indexOf(drill), number(one), number(other)))
                .toList();
        if (!bothNew.isEmpty()) {
            why.add(said("why.new", Message.words(bothNew)));
        }
        if (bothNew.size() < drills.size()) {
            why.add(ifTogether(number(one), number(other)));
        }
        return why;
    }

    private Message ifTogether(int one, int other) {
        Optional<CostVector> best = Optional.empty();
        int at = 0;
        for (int round = 0; round < request.open().size(); round++) {
            Optional<CostVector> tried = solution.together(round, one, other);
            if (tried.isPresent() && (best.isEmpty() || tried.get().compareTo(best.get()) < 0)) {
                best = tried;
                at = round;
            }
        }
        int round = plan.firstPlanned() + at + 1;
        return best.map(tally -> compared("meet", round, tally)).orElseGet(() -> said("why.never"));
    }

    /** @param change what would be otherwise in the round: {@code part} or {@code meet} */
    private Message compared(String change, int round, CostVector tally) {
        Optional<Objective> aim = tally.firstDifference(solution.cost());
        if (aim.isEmpty()) {
            return said(change + ".equal", round);
        }
        long more = tally.of(aim.get()) - solution.cost().of(aim.get());
        if (more < 0) {
            String better = plan.method().isWalked() ? ".better.walked" : ".better";
            return said(change + better, round, -more, aim.get().words());
        }
        return said(change + ".worse", round, more, aim.get().words());
    }

    private static Message said(String key, Object... values) {
        return Message.of(Why.class, key, values);
    }
}
