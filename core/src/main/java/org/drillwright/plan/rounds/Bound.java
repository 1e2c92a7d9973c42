package org.drillwright.plan.rounds;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.stream.IntStream;
import java.util.stream.Stream;

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
    static CostVector of(Problem problem, List<Extras> extras) {
        Bound bound = new Bound(problem, extras);
        CostVector byRounds = byRounds(problem, extras);
        return Overall.of(problem, extras, byRounds, bound::mayBeAlone).stream()
                .flatMap(overall -> Stream.of(overall, joined(overall, byRounds)))
                .max(Comparator.naturalOrder())
                .filter(row -> row.compareTo(byRounds) > 0)
                .orElse(byRounds);
    }

    /**
     * What all rounds together say of repeats and turns, and behind it what rounds by themselves say of the rest: with hands
     * as good as in each round by itself, no round's rest is less.
     */
    private static CostVector joined(CostVector overall, CostVector byRounds) {
        if (overall.of(Objective.ASKED) != byRounds.of(Objective.ASKED)) {
            return overall;
        }
        int rest = Objective.GAP.rank();
        return new CostVector(Stream.concat(
                        overall.costs().subList(0, rest).stream(),
                        byRounds.costs().subList(rest, Objective.COUNT).stream())
                .toList());
    }

    private boolean mayBeAlone(int student) {
        return !onlyNovicesAreLeft() || isEverNew(student);
    }

    /**
     * Repeats: whoever has fewer permitted partners than rounds must repeat. Turns: dealt out as evenly as can be. The
     * rest: each round by itself at its least, as if there were no other.
     */
    static CostVector byRounds(Problem problem, List<Extras> extras) {
        Bound bound = new Bound(problem, extras);
        long[] costs = new long[Objective.COUNT];
        costs[Objective.REPEATS.rank()] = bound.repeats();
        for (Objective kind : Objective.TURNS_OF_A_KIND) {
            costs[kind.rank()] = bound.turns(kind);
        }
        bound.addLasting(costs);
        return CostVector.of(costs);
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

    private List<Integer> independent() {
        List<Integer> novices = new ArrayList<>();
        for (int student = 0; student < problem.students(); student++) {
            int one = student;
            if (IntStream.range(0, problem.rounds())
                    .allMatch(round -> problem.strangers(round).get(one))) {
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

    /** All turns of a kind, dealt out as evenly as can be to those who may have them. */
    private long turns(Objective kind) {
        boolean newOnly = kind == Objective.WATCHED || (kind != Objective.TURNS && onlyNovicesAreLeft());
        List<Long> had = new ArrayList<>();
        for (int student = 0; student < problem.students(); student++) {
            if (!newOnly || isEverNew(student)) {
                had.add((long) problem.hadBefore(kind, student));
            }
        }
        return dealt(
                had,
                IntStream.range(0, problem.rounds())
                        .map(round -> count(kind, round))
                        .sum());
    }

    private int count(Objective kind, int round) {
        Extras one = extras.get(round);
        return switch (kind) {
            case TURNS -> one.helpers();
            case THREES -> one.threes();
            case BLANKS -> one.blanks();
            default -> 2 * newPairs(round);
        };
    }

    /**
     * Pairs of two who are new, those that a third joins among them: of the meetings of two who are new a third has one at
     * most, and in each other pair there is somebody who knows the drill.
     */
    private int newPairs(int round) {
        Extras one = extras.get(round);
        int pairs = (problem.students() - one.threes() - one.helpers() - one.blanks()) / 2;
        int knowing = problem.students() - problem.novices(round).cardinality();
        return Math.max(0, Math.max(one.watched() - one.threes(), pairs - knowing));
    }

    private boolean isEverNew(int student) {
        return IntStream.range(0, problem.rounds())
                .anyMatch(round -> problem.novices(round).get(student));
    }

    /** Where novices outnumber all others by just those who are left, one who knows the drill is never among these. */
    private boolean onlyNovicesAreLeft() {
        for (int round = 0; round < problem.rounds(); round++) {
            Extras one = extras.get(round);
            int novices = problem.novices(round).cardinality();
            int others = problem.students() - novices + one.helpers();
            if (one.watched() > 0 || novices - others != one.threes() + one.blanks()) {
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

    /** Hands and gaps first; then, as no round may pass the largest gap, the rest within it. Rounds that are alike are one. */
    private void addLasting(long[] costs) {
        Map<Integer, Integer> alike = new LinkedHashMap<>();
        for (int round = 0; round < problem.rounds(); round++) {
            alike.merge(firstLike(round), 1, Integer::sum);
        }
        long widest = alike.keySet().stream()
                .mapToLong(round -> leastOf(round, 0)[Objective.WIDEST.rank()])
                .max()
                .orElse(0);
        alike.forEach((round, times) -> {
            long[] least = leastOf(round, widest);
            for (Objective aim :
                    List.of(Objective.ASKED, Objective.GAP, Objective.PAST, Objective.LEVEL, Objective.HANDS)) {
                costs[aim.rank()] += least[aim.rank()] * times;
            }
        });
        costs[Objective.WIDEST.rank()] = widest;
    }

    private int firstLike(int round) {
        int first = 0;
        while (!problem.isAlike(first, round)) {
            first++;
        }
        return first;
    }

    /** A round's least costs; aims that found no room in the weights were not looked at, and count 0. */
    private long[] leastOf(int round, long floor) {
        RoundMatching choices = RoundMatching.of(problem, round, extras.get(round), this::lasting)
                .relaxed();
        return choices.leastCosts(floor).orElseGet(() -> new long[Objective.COUNT]);
    }

    private void lasting(int round, int student, int mate, long[] into) {
        if (problem.isStudent(mate)) {
            TableCost.lasting(problem, round, student, mate, into);
        } else if (mate > problem.blank()) {
            TableCost.lasting(problem, round, student, problem.joined(mate), into);
        }
    }
}
