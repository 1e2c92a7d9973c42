package org.drillwright.plan.walk;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.drillwright.plan.rounds.Extras;
import org.drillwright.plan.rounds.Problem;

/**
 * Deals people to two lines for some drills, so that everybody of the one may work with everybody of the other. Who may not
 * work together in one of the drills has to stand in one line; so have all who are joined by such pairs. Two lines can be
 * made if some of these components fill one line and the others the second, or what helpers and gaps leave of it.
 */
final class Dealing {

    /** Among more helpers not every choice is looked at. */
    private static final int FEW_HELPERS = 10;

    private final Problem problem;
    private final List<Extras> least;
    private final int from;
    private final int to;
    private final int[] component;
    private final int helpers;
    private final int gaps;

    /**
     * @param from the first round
     * @param to the round after the last
     */
    Dealing(Problem problem, List<Extras> least, int from, int to) {
        this.problem = problem;
        this.least = least;
        this.from = from;
        this.to = to;
        this.component = IntStream.range(0, problem.students()).toArray();
        join();
        this.helpers = helpersToSpare();
        this.gaps = IntStream.range(from, to)
                .map(round -> least.get(round).threes() + least.get(round).blanks())
                .min()
                .orElse(0);
    }

    private void join() {
        for (int round = from; round < to; round++) {
            boolean seen = round > from && problem.novices(round).equals(problem.novices(round - 1));
            for (int one = 0; one < component.length && !seen; one++) {
                for (int other = one + 1; other < component.length; other++) {
                    if (component[one] != component[other] && !problem.permits(round, one, other)) {
                        join(component[one], component[other]);
                    }
                }
            }
        }
    }

    private void join(int kept, int gone) {
        for (int at = 0; at < component.length; at++) {
            component[at] = component[at] == gone ? kept : component[at];
        }
    }

    /** Whoever watches those who are new to a drill can't stand in a line. */
    private int helpersToSpare() {
        int spare = problem.helpers();
        for (int round = from; round < to; round++) {
            if (least.get(round).watched() > 0) {
                int pairs = problem.students() / 2;
                int watching = isAnyHelperApart() ? spare : (pairs + problem.eyes() - 1) / problem.eyes();
                spare = Math.max(least.get(round).helpers(), Math.min(spare, problem.helpers() - watching));
            }
        }
        return spare;
    }

    private boolean isAnyHelperApart() {
        return IntStream.range(problem.students(), problem.blank()).anyMatch(helper -> apartFrom(helper) > 0);
    }

    private int apartFrom(int helper) {
        return (int) IntStream.range(0, problem.students())
                .filter(student -> problem.areApart(helper, student))
                .count();
    }

    /** Whether some of those who are new work together and others don't: no movement keeps the two apart. */
    private boolean isMixed() {
        return IntStream.range(from, to)
                .anyMatch(round -> least.get(round).watched() > 0 && !problem.isNewToAll(round));
    }

    /**
     * Two lines in which all may meet across.
     *
     * @param moved who moved before, and moves again if that can be
     */
    Optional<LinePosts> lines(BitSet moved) {
        for (int walkers = problem.students() / 2; walkers >= 0 && !isMixed() && isFilled(walkers); walkers--) {
            int wanted = Math.min(helpers, problem.students() - 2 * walkers);
            for (BitSet helping : helping(wanted)) {
                Optional<BitSet> found = walkers + wanted == 0 ? Optional.empty() : summed(walkers, helping, moved);
                if (found.isPresent()) {
                    return found.map(moves -> lines(moves, helping));
                }
            }
        }
        return Optional.empty();
    }

    private boolean isFilled(int walkers) {
        return problem.students() - 2 * walkers <= helpers + gaps;
    }

    /** All choices of so many helpers, those first from whom fewest are kept apart. */
    private List<BitSet> helping(int count) {
        List<Integer> all = IntStream.range(problem.students(), problem.blank())
                .boxed()
                .sorted(Comparator.comparing(this::apartFrom))
                .limit(Math.max(count, FEW_HELPERS))
                .toList();
        boolean alike = count == 0 || apartFrom(all.get(count - 1)) == 0;
        if (alike || all.size() > FEW_HELPERS) {
            return List.of(chosen(all, (1 << count) - 1));
        }
        return IntStream.range(0, 1 << all.size())
                .filter(set -> Integer.bitCount(set) == count)
                .mapToObj(set -> chosen(all, set))
                .toList();
    }

    private static BitSet chosen(List<Integer> all, int set) {
        BitSet chosen = new BitSet();
        IntStream.range(0, Math.min(all.size(), Integer.SIZE - 1))
                .filter(at -> (set >> at & 1) == 1)
                .forEach(at -> chosen.set(all.get(at)));
        return chosen;
    }

    /** Students who move, so many of them: whole components, among them whoever is kept apart from a helper who moves. */
    private Optional<BitSet> summed(int walkers, BitSet helping, BitSet moved) {
        List<BitSet> components = components();
        components.sort(Comparator.<BitSet>comparingInt(members -> isTied(members, helping) ? 0 : 1)
                .thenComparing(members -> members.intersects(moved) ? 0 : 1)
                .thenComparing(this::fresh)
                .thenComparing(members -> -members.nextSetBit(0)));
        int count = components.size();
        boolean[][] reach = new boolean[count + 1][walkers + 1];
        reach[count][0] = true;
        for (int at = count - 1; at >= 0; at--) {
            int size = components.get(at).cardinality();
            boolean tied = isTied(components.get(at), helping);
            for (int sum = 0; sum <= walkers; sum++) {
                reach[at][sum] = (sum >= size && reach[at + 1][sum - size]) || (!tied && reach[at + 1][sum]);
            }
        }
        if (!reach[0][walkers]) {
            return Optional.empty();
        }
        BitSet moves = new BitSet();
        int left = walkers;
        for (int at = 0; at < count; at++) {
            int size = components.get(at).cardinality();
            if (left >= size && reach[at + 1][left - size]) {
                moves.or(components.get(at));
                left -= size;
            }
        }
        return Optional.of(moves);
    }

    private boolean isTied(BitSet members, BitSet helping) {
        return helping.stream()
                .anyMatch(helper -> members.stream().anyMatch(student -> problem.areApart(helper, student)));
    }

    private int fresh(BitSet members) {
        BitSet fresh = novices();
        fresh.and(members);
        return fresh.cardinality();
    }

    /** Whoever may in at least one round not work with others like that. */
    BitSet novices() {
        BitSet all = new BitSet();
        for (int round = from; round < to; round++) {
            all.or(problem.strangers(round));
        }
        return all;
    }

    private List<BitSet> components() {
        List<BitSet> all = new ArrayList<>();
        for (int first = 0; first < component.length; first++) {
            BitSet members = new BitSet();
            for (int at = 0; at < component.length; at++) {
                members.set(at, component[at] == first);
            }
            if (!members.isEmpty()) {
                all.add(members);
            }
        }
        return all;
    }

    private LinePosts lines(BitSet moves, BitSet helping) {
        BitSet fresh = novices();
        List<Integer> stays = IntStream.range(0, problem.students())
                .filter(student -> !moves.get(student))
                .boxed()
                .sorted(Comparator.comparing(student -> fresh.get(student) ? 0 : 1))
                .toList();
        return new LinePosts(
                stays,
                spread(moves.stream().boxed().toList(), helping.stream().boxed().toList(), stays.size()));
    }

    /** Helpers between the students who move, and gaps between all of them, so that both come to everybody alike often. */
    private List<Integer> spread(List<Integer> students, List<Integer> helping, int length) {
        int walkers = students.size() + helping.size();
        List<Integer> moving = new ArrayList<>(students);
        for (int at = 0; at < helping.size(); at++) {
            moving.add((at + 1) * walkers / helping.size() - 1, helping.get(at));
        }
        List<Integer> line = new ArrayList<>(Collections.nCopies(length, problem.blank()));
        for (int at = 0; at < walkers; at++) {
            line.set(at * length / walkers, moving.get(at));
        }
        return line;
    }

    /** Lines of which nothing is known but that they are of one length; the new ones stay as far as there is room. */
    Optional<LinePosts> sizes() {
        int walkers = problem.students() / 2;
        int left = problem.students() - 2 * walkers;
        if (walkers == 0 || isMixed() || !isFilled(walkers)) {
            return Optional.empty();
        }
        BitSet fresh = novices();
        BitSet moves = new BitSet();
        IntStream.range(0, problem.students())
                .boxed()
                .sorted(Comparator.<Integer, Integer>comparing(student -> fresh.get(student) ? 1 : 0)
                        .thenComparing(Comparator.reverseOrder()))
                .limit(walkers)
                .forEach(moves::set);
        return Optional.of(lines(moves, helping(Math.min(helpers, left)).get(0)));
    }

    /** Why there are no such lines. */
    Obstacle obstacle() {
        if (isMixed()) {
            return new Obstacle(from, to, Obstacle.Why.TOO_MANY_NEW, List.of(), helpers);
        }
        BitSet largest = Collections.max(components(), Comparator.comparing(BitSet::cardinality));
        int others = problem.students() - largest.cardinality();
        boolean one = largest.cardinality() > others + helpers + gaps;
        List<Integer> together =
                Arrays.stream(largest.stream().toArray()).boxed().toList();
        return new Obstacle(from, to, one ? Obstacle.Why.ONE_LINE : Obstacle.Why.UNEVEN, together, helpers);
    }
}
