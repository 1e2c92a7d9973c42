package org.drillwright.plan.rounds;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Chooses the simplest movement that serves a class for all its rounds. */
final class Formations {

    private Formations() {}

    /** Two lines, else the ring, else the ring with gaps; empty if none serves. */
    static Optional<Formation> of(Problem problem, List<Extras> extras) {
        int rounds = problem.rounds();
        int novices = problem.everStrangers().cardinality();
        if (rounds == 0 || extras.stream().distinct().count() > 1 || isMixed(problem, extras.get(0))) {
            return Optional.empty();
        }
        Extras extra = extras.get(0);
        int posts = problem.students() + extra.helpers();
        int walkers = posts - novices;
        if (novices > walkers) {
            boolean serves = problem.isUniform()
                    && walkers > 0
                    && rounds <= novices
                    && novices - walkers == extra.threes() + extra.blanks();
            return serves ? Optional.of(new BlankRing(novices, walkers)) : Optional.empty();
        }
        if (posts % 2 != 0 || posts == 0) {
            return Optional.empty();
        }
        if (rounds <= posts / 2) {
            return Optional.of(new TwoLines(posts / 2));
        }
        if (extra.threes() + extra.blanks() > 0) {
            return Optional.empty();
        }
        int still = Math.max(1, novices);
        return rounds <= posts - still ? Optional.of(new Ring(still, posts - still)) : Optional.empty();
    }

    /** Whether some of those who are new work together and others don't: no movement keeps the two apart. */
    private static boolean isMixed(Problem problem, Extras extras) {
        return extras.watched() > 0
                && IntStream.range(0, problem.rounds()).anyMatch(round -> !problem.isNewToAll(round));
    }
}
