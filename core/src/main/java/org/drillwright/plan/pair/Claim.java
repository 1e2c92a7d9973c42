package org.drillwright.plan.pair;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.drillwright.plan.proof.LineSplits;
import org.drillwright.plan.proof.Recount;
import org.drillwright.plan.proof.WalkRecount;
import org.drillwright.plan.rounds.Extras;
import org.drillwright.plan.rounds.Objective;
import org.drillwright.plan.rounds.Problem;
import org.drillwright.plan.rounds.Solution;
import org.drillwright.plan.walk.Walked;

/** Has a plan counted once more, by code that knows nothing of how it was found, before anything is claimed of it. */
final class Claim {

    private final PairingRequest request;
    private final Recount.Asked asked;

    private Claim(PairingRequest request) {
        this.request = request;
        this.asked = new Recount.Asked(
                request.students(),
                request.helpers(),
                request.apart(),
                request.levels(),
                request.mode(),
                request.knowledge(),
                request.hands(),
                request.ways(),
                request.history());
    }

    /**
     * How good the plan is known to be.
     *
     * @param rounds all of them, those already played first
     * @throws IllegalStateException if the plan isn't what it was taken for, which is a fault of the program
     */
    static Verdict of(PairingRequest request, Walked walked, List<Round> rounds) {
        Claim claim = new Claim(request);
        Solution solution = walked.solution();
        claim.mustKeepTheRules(rounds.subList(request.played().size(), rounds.size()));
        List<Recount.Sitting> planned =
                claim.sittings(rounds.subList(request.played().size(), rounds.size()));
        for (int round = 0; round < planned.size(); round++) {
            Extras extras = solution.extras().get(round);
            List<Integer> kinds = List.of(extras.blanks(), extras.threes(), extras.helpers(), extras.watched());
            if (!Recount.kinds(claim.asked, planned.get(round)).equals(kinds)) {
                throw new IllegalStateException("a round with other groups than " + kinds);
            }
        }
        List<Long> row = Recount.row(claim.asked, claim.sittings(request.played()), planned);
        if (!row.equals(solution.cost().costs())) {
            throw new IllegalStateException("a plan that costs " + row + " was taken for one of " + solution.cost());
        }
        List<String> faults = WalkRecount.faults(lines(RoundMaker.walks(request, walked)), claim.sittings(rounds));
        if (!faults.isEmpty()) {
            throw new IllegalStateException("a plan that isn't walked as is said: " + faults);
        }
        return new Verdict(
                solution.cost(), solution.bound(), walked.takesMore(), isBestSplit(request, walked, rounds.size()));
    }

    /** Whether one line walks past the whole of the other once, and no others would have fewer past meetings. */
    private static boolean isBestSplit(PairingRequest request, Walked walked, int rounds) {
        List<Walk> walks = RoundMaker.walks(request, walked);
        Solution solution = walked.solution();
        Problem problem = solution.problem();
        boolean once = walks.size() == 1
                && walks.get(0).to() == rounds
                && walks.get(0).length() == problem.rounds()
                && 2 * problem.rounds() == problem.students()
                && walks.get(0).people().size() == problem.students()
                && request.helpers().stream().noneMatch(walks.get(0).people()::contains)
                && IntStream.range(0, problem.rounds()).noneMatch(problem::isAsking);
        if (!once
                || solution.cost()
                        .firstDifference(solution.bound())
                        .filter(Objective.PAST::equals)
                        .isEmpty()) {
            return false;
        }
        LineSplits splits = new LineSplits(
                problem.students(),
                (one, other) -> IntStream.range(0, problem.rounds())
                        .allMatch(round -> one.equals(other) || problem.permits(round, one, other)),
                (one, other) -> (int) problem.cost(Objective.PAST, one, other));
        return splits.least().stream()
                .anyMatch(least -> least == solution.cost().of(Objective.PAST));
    }

    static List<WalkRecount.Line> lines(List<Walk> walks) {
        return walks.stream()
                .map(walk -> new WalkRecount.Line(walk.from(), walk.to(), walk.stays(), walk.moves(), Walk.REST))
                .toList();
    }

    /** One way to change over, counted. */
    static WalkChoice choice(
            PairingRequest request, Walked walked, List<Round> rounds, List<String> read, boolean usual) {
        List<Walk> walks = RoundMaker.walks(request, walked);
        List<Integer> changes = List.copyOf(WalkRecount.changes(lines(walks)).values());
        Map<Integer, Set<Set<String>>> again = WalkRecount.again(new Claim(request).sittings(rounds));
        Map<Integer, Integer> counts = new HashMap<>();
        again.forEach((round, pairs) -> counts.put(round, pairs.size()));
        return new WalkChoice(
                walked.formings().size(),
                read,
                new WalkChoice.Changes(
                        changes.size(),
                        changes.stream().mapToInt(Integer::intValue).max().orElse(0)),
                counts,
                (int) again.values().stream().flatMap(Set::stream).distinct().count(),
                usual);
    }

    private void mustKeepTheRules(List<Round> planned) {
        for (Recount.Sitting sitting : sittings(planned)) {
            List<String> faults = Recount.faults(asked, sitting);
            if (!faults.isEmpty()) {
                throw new IllegalStateException("a round that must not be: " + faults);
            }
        }
    }

    private List<Recount.Sitting> sittings(List<Round> rounds) {
        return rounds.stream()
                .map(round -> new Recount.Sitting(
                        round.drill(),
                        round.groups().stream()
                                .filter(group -> !request.soloists().containsAll(group.people()))
                                .map(group -> new Recount.Together(group.people(), group.helper(), group.eyes()))
                                .toList()))
                .toList();
    }
}
