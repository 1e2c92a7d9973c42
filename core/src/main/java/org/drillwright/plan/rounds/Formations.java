package org.drillwright.plan.rounds;

import java.util.List;
import java.util.Optional;

/** Chooses the simplest movement that serves a class for all its rounds. */
final class Formations {

    private Formations() {}

    /** Two lines, else the ring, else the ring with gaps; empty if none serves. */
    static Optional<Formation> of(Problem problem, List<Extras> extras) {
        int rounds = problem.rounds();
        int novices = problem.everNovices().cardinality();
        if (rounds == 0 || extras.stream().distinct().count() > 1) {
            return Optional.empty();
        }
        int posts = problem.students() + extras.get(0).helpers();
        int walkers = posts - novices;
        if (novices > walkers) {
            boolean serves = problem.isUniform() && walkers > 0 && rounds <= novices;
            return serves ? Optional.of(new BlankRing(novices, walkers)) : Optional.empty();
        }
        if (posts % 2 != 0 || posts == 0) {
            return Optional.empty();
        }
        if (rounds <= posts / 2) {
            return Optional.of(new TwoLines(posts / 2));
        }
        int still = Math.max(1, novices);
        return rounds <= posts - still ? Optional.of(new Ring(still, posts - still)) : Optional.empty();
    }
}
