package org.drillwright.plan.rounds;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.stream.IntStream;

/** A tally that no table can be below, found without making a table. */
final class Bound {

    private final Problem problem;
    private final List<Extras> extras;

    private Bound(Problem problem, List<Extras> extras) {
        this.problem = problem;
        this.extras = extras;
    }

    /**
     * The greatest of several rows, each of which no table can be below: a row counts as a whole, for what is least of one
     * aim may be had only at the price of another.
     */
    static Tally of(Problem problem, List<Extras> extras) {
        Bound bound = new Bound(problem, extras);
        Tally byRounds = bound.byRounds();
        return bound.byPartners(byRounds)
                .filter(row -> row.compareTo(byRounds) > 0)
                .orElse(byRounds);
    }

    /**
     * Repeats: whoever has fewer permitted partners than rounds must repeat. Turns: dealt out as evenly as can be. The
     * rest: each round by itself at its least, as if there were no other.
     */
    private Tally byRounds() {
        long[] costs = new long[Aim.COUNT];
        costs[Aim.REPEATS.rank()] = repeats();
        costs[Aim.TURNS.rank()] = turns();
        costs[Aim.BLANKS.rank()] = blanks();
        addLasting(costs);
        return Tally.of(costs);
    }

    /** Each student's meetings, spread evenly over the permitted partners; turns without one save the dearest. */
    private long repeats() {
        List<List<Long>> surplus = new ArrayList<>();
        for (int student = 0; student < problem.students(); student++) {
            surplus.add(surplus(student));
        }
        return ofPairs(surplus);
    }

    /**
     * What pairs cost at least, from what each student's meetings cost at least. Each pair is counted from both sides; but
     * no two who are new to every drill ever meet, so theirs are counted once.
     */
    private long ofPairs(List<List<Long>> costs) {
        long all = withoutDearest(costs.stream().flatMap(List::stream).toList());
        long novices = withoutDearest(independent().stream()
                .flatMap(student -> costs.get(student).stream())
                .toList());
        return Math.max((all + 1) / 2, novices);
    }

    /**
     * Without repeats each student has as many different partners as rounds: at best, in each aim by itself, those that
     * cost least. Nothing is known of the largest gap.
     */
    private Optional<Tally> byPartners(Tally byRounds) {
        if (byRounds.of(Aim.REPEATS) > 0) {
            return Optional.empty();
        }
        long[] costs = new long[Aim.COUNT];
        costs[Aim.TURNS.rank()] = byRounds.of(Aim.TURNS);
        costs[Aim.BLANKS.rank()] = byRounds.of(Aim.BLANKS);
        for (Aim aim : List.of(Aim.GAP, Aim.PAST, Aim.LEVEL, Aim.HANDS)) {
            List<List<Long>> least = new ArrayList<>();
            for (int student = 0; student < problem.students(); student++) {
                least.add(leastOfPartners(aim, student));
            }
            costs[aim.rank()] = ofPairs(least);
        }
        return Optional.of(Tally.of(costs));
    }

    private List<Long> leastOfPartners(Aim aim, int student) {
        return IntStream.range(0, problem.students())
                .filter(other -> everPermitted(student, other) && problem.metBefore(student, other) == 0)
                .mapToObj(other -> problem.cost(aim, student, other))
                .sorted()
                .limit(problem.rounds())
                .toList();
    }

    private List<Integer> independent() {
        List<Integer> novices = new ArrayList<>();
        for (int student = 0; student < problem.students(); student++) {
            int one = student;
            boolean always = true;
            for (int round = 0; round < problem.rounds(); round++) {
                always &= problem.novices(round).get(one);
            }
            if (always) {
                novices.add(student);
            }
        }
        return novices;
    }

    private List<Long> surplus(int student) {
        PriorityQueue<Long> partners = new PriorityQueue<>();
        for (int other = 0; other < problem.students(); other++) {
            if (everPermitted(student, other)) {
                partners.add((long) problem.metBefore(student, other));
            }
        }
        List<Long> surplus = new ArrayList<>();
        for (int round = 0; round < problem.rounds() && !partners.isEmpty(); round++) {
            long times = partners.remove();
            surplus.add(times);
            partners.add(times + 1);
        }
        return surplus;
    }

    private boolean everPermitted(int one, int other) {
        for (int round = 0; round < problem.rounds(); round++) {
            if (problem.permits(round, one, other)) {
                return true;
            }
        }
        return false;
    }

    private long withoutDearest(List<Long> costs) {
        int saved =
                extras.stream().mapToInt(one -> one.helpers() + one.blanks()).sum();
        return costs.stream()
                .sorted(Comparator.reverseOrder())
                .skip(saved)
                .mapToLong(Long::longValue)
                .sum();
    }

    private long turns() {
        List<Long> had = new ArrayList<>();
        for (int student = 0; student < problem.students(); student++) {
            had.add((long) problem.turnsBefore(student));
        }
        return dealt(had, extras.stream().mapToInt(Extras::helpers).sum());
    }

    private long blanks() {
        List<Long> had = new ArrayList<>();
        for (int student = 0; student < problem.students(); student++) {
            if (!onlyNovicesAreLeft() || problem.everNovices().get(student)) {
                had.add((long) problem.blanksBefore(student));
            }
        }
        return dealt(had, extras.stream().mapToInt(Extras::blanks).sum());
    }

    /** Where novices outnumber all others by just the blanks, one who knows the drill never stands alone. */
    private boolean onlyNovicesAreLeft() {
        for (int round = 0; round < problem.rounds(); round++) {
            int novices = problem.novices(round).cardinality();
            int others = problem.students() - novices + extras.get(round).helpers();
            if (novices - others != extras.get(round).blanks()) {
                return false;
            }
        }
        return true;
    }

    private static long dealt(List<Long> had, int turns) {
        PriorityQueue<Long> least = new PriorityQueue<>(had);
        long sum = 0;
        for (int turn = 0; turn < turns && !least.isEmpty(); turn++) {
            long before = least.remove();
            sum += before;
            least.add(before + 1);
        }
        return sum;
    }

    /** Gaps first; then, as no round may pass the largest gap, the rest within it. Rounds with the same novices are one. */
    private void addLasting(long[] costs) {
        Map<BitSet, Integer> alike = new LinkedHashMap<>();
        Map<BitSet, Integer> first = new LinkedHashMap<>();
        for (int round = 0; round < problem.rounds(); round++) {
            alike.merge(problem.novices(round), 1, Integer::sum);
            first.putIfAbsent(problem.novices(round), round);
        }
        long widest = first.values().stream()
                .mapToLong(round -> leastOf(round, 0)[Aim.WIDEST.rank()])
                .max()
                .orElse(0);
        first.forEach((novices, round) -> {
            long[] least = leastOf(round, widest);
            for (Aim aim : List.of(Aim.GAP, Aim.PAST, Aim.LEVEL, Aim.HANDS)) {
                costs[aim.rank()] += least[aim.rank()] * alike.getOrDefault(novices, 0);
            }
        });
        costs[Aim.WIDEST.rank()] = widest;
    }

    /** A round's least costs; aims that found no room in the weights were not looked at, and count 0. */
    private long[] leastOf(int round, long floor) {
        Choices choices = Choices.of(problem, round, extras.get(round), this::lasting);
        long[] least =
                choices.least(floor, Optional.empty()).map(choices::costs).orElseGet(() -> new long[Aim.COUNT]);
        Arrays.fill(least, choices.known(), Aim.COUNT, 0);
        return least;
    }

    private void lasting(int student, int mate, long[] into) {
        if (problem.isStudent(mate)) {
            Reckoning.lasting(problem, student, mate, into);
        }
    }
}
