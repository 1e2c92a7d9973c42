package org.drillwright.plan.pair;

import java.util.List;
import org.drillwright.plan.proof.Recount;
import org.drillwright.plan.rounds.Extras;
import org.drillwright.plan.rounds.Solution;

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
    static Verdict of(PairingRequest request, Solution solution, List<Round> rounds) {
        Claim claim = new Claim(request);
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
        return new Verdict(solution.cost(), solution.bound());
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
