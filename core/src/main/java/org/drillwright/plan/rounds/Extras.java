package org.drillwright.plan.rounds;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.drillwright.plan.match.Edge;
import org.drillwright.plan.match.Matching;
import org.drillwright.plan.roster.BothNew;

/**
 * What a round has besides safe pairs of students: first of all the fewest alone. Then, as a rule, the fewest pairs of two
 * new ones, the fewest thirds, the fewest helpers at work. Where pairs of two new ones are wanted, thirds go before them; where
 * nobody knows the drill these pairs are no shortage, and the fewest thirds and helpers at work count.
 *
 * @param helpers how many helpers, whichever, take a student
 * @param threes how many join a pair as its third
 * @param watched meetings of two who are new to the drill: one in a pair, two in a three
 * @param blanks students left alone
 */
public record Extras(int helpers, int threes, int watched, int blanks) {

    public static final Extras NONE = new Extras(0, 0, 0, 0);

    /** Counts them for one round. */
    public static Extras of(Problem problem, int round) {
        return new Count(problem, round).best();
    }

    /** The extras of each round; rounds with the same novices are counted once. */
    public static List<Extras> ofAll(Problem problem) {
        List<Extras> all = new ArrayList<>();
        for (int round = 0; round < problem.rounds(); round++) {
            int same = round - 1;
            while (same >= 0
                    && !(problem.novices(same).equals(problem.novices(round))
                            && all.get(same).isCertain())) {
                same--;
            }
            all.add(same >= 0 ? all.get(same) : of(problem, round));
            if (all.get(round).watched() > 0) {
                problem.watch(round);
            }
        }
        return List.copyOf(all);
    }

    /** Whether the same numbers can be had in each such round, whoever of the new ones is set to stand in the middle. */
    private boolean isCertain() {
        return threes == 0 || watched == 0;
    }

    /** Tries numbers in the order in which they are wanted, and stops where those still to come can't be better. */
    private static final class Count {

        private final Problem problem;
        private final int round;
        private final boolean newToAll;
        private final boolean eyes;
        private final int middles;
        private final int unpaired;

        Count(Problem problem, int round) {
            this.problem = problem;
            this.round = round;
            this.newToAll = problem.isNewToAll(round);
            this.eyes = switch (problem.bothNew()) {
                case NEVER -> false;
                case NEEDED -> problem.helpers() > 0 && (problem.threes() || newToAll);
                case WANTED -> true;
            };
            int knowing = problem.students() - problem.novices(round).cardinality();
            this.middles = problem.threes() ? (eyes ? problem.students() : knowing) : 0;
            this.unpaired = unmatched();
        }

        /** How many have no partner in the largest matching of students. */
        private int unmatched() {
            List<Edge> edges = new ArrayList<>();
            for (int one = 0; one < problem.students(); one++) {
                for (int other = one + 1; other < problem.students(); other++) {
                    if (problem.isSafe(round, one, other) || (eyes && problem.mayBeWatched(round, one, other))) {
                        edges.add(new Edge(one, other, 0));
                    }
                }
            }
            return (int) IntStream.of(Matching.largest(problem.students(), edges))
                    .filter(mate -> mate == Matching.NOBODY)
                    .count();
        }

        Extras best() {
            for (int alone = 0; alone <= problem.students(); alone++) {
                Optional<Extras> found = with(alone);
                if (found.isPresent()) {
                    return found.get();
                }
            }
            throw new IllegalStateException("a round of which not even all alone is a solution");
        }

        private Optional<Extras> with(int alone) {
            List<Extras> hoped = new ArrayList<>();
            for (int threes = 0; threes <= middles; threes++) {
                for (int helpers = 0; helpers <= problem.helpers(); helpers++) {
                    int paired = problem.students() - alone - threes - helpers;
                    if (paired >= 2 * threes && paired % 2 == 0 && alone + threes + helpers >= unpaired) {
                        hoped.add(new Extras(helpers, threes, fewestWatched(alone + helpers, threes), alone));
                    }
                }
            }
            hoped.sort(order());
            Optional<Extras> best = Optional.empty();
            for (Extras hope : hoped) {
                if (best.isPresent() && order().compare(best.get(), hope) <= 0) {
                    break;
                }
                Optional<Extras> real = real(hope);
                if (real.isPresent() && (best.isEmpty() || order().compare(real.get(), best.get()) < 0)) {
                    best = real;
                }
            }
            return best;
        }

        /** Who knows the drill takes one who is new as a partner and one as a third; the others meet those who are new. */
        private int fewestWatched(int others, int threes) {
            int fresh = problem.novices(round).cardinality();
            int knowing = problem.students() - fresh;
            int among = Math.max(0, threes - knowing);
            return among + Math.max(0, (fresh - knowing - others - threes + 1) / 2);
        }

        private Comparator<Extras> order() {
            Comparator<Extras> threes = Comparator.comparingInt(Extras::threes);
            Comparator<Extras> watched = Comparator.comparingInt(Extras::watched);
            Comparator<Extras> first = newToAll
                    ? threes
                    : problem.bothNew() == BothNew.WANTED
                            ? threes.thenComparing(watched)
                            : watched.thenComparing(threes);
            return first.thenComparingInt(Extras::helpers);
        }

        /** The numbers with the meetings of new ones that they really need; nothing if there is no such round. */
        private Optional<Extras> real(Extras hope) {
            if (hope.watched() - hope.threes() > mostPosts(hope)) {
                return Optional.empty();
            }
            Extras open = new Extras(hope.helpers(), hope.threes(), eyes ? 1 : 0, hope.blanks());
            Optional<SplittableRandom> none = Optional.empty();
            return RoundMatching.of(problem, round, open, (at, student, mate, into) -> {})
                    .least(0, none)
                    .filter(row -> watched(row, /* thirds= */ false) <= mostPosts(hope))
                    .map(row ->
                            new Extras(hope.helpers(), hope.threes(), watched(row, /* thirds= */ true), hope.blanks()));
        }

        private int watched(int[] row, boolean thirds) {
            int watched = 0;
            for (int student = 0; student < row.length; student++) {
                int middle = problem.joined(row[student]);
                boolean pair = problem.isStudent(row[student])
                        && row[student] > student
                        && problem.areBothNew(round, student, row[student]);
                watched += pair || (thirds && middle >= 0 && problem.areBothNew(round, student, middle)) ? 1 : 0;
            }
            return watched;
        }

        private int mostPosts(Extras found) {
            if (!eyes) {
                return 0;
            }
            return problem.helpers() == 0 ? problem.students() : problem.eyes() * (problem.helpers() - found.helpers());
        }
    }
}
