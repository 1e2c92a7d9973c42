package org.drillwright.plan.rounds;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.drillwright.plan.match.Branching;
import org.drillwright.plan.match.CostedEdge;
import org.drillwright.plan.match.LeastCosts;

/**
 * Whom one round may put together, each with its costs, and the choice of least cost. Students come first, then all helpers
 * and one vertex for each of them who is not at work; then one for each whose pair a third may join and one for each of
 * them whose pair nobody joins; then one for each student who is alone.
 */
final class RoundMatching {

    private static final int CHANCE = 8;

    /** Beyond so many not everyone's pair may be joined. */
    private static final int MIDDLES = 60;

    /** Beyond so many who are new not each of them may have two partners. */
    private static final int NEW_MIDDLES = 6;

    private final Problem problem;
    private final int round;
    private final Extras extras;
    private final int vertices;
    private final List<Integer> middles;
    private final List<CostedEdge> fillers;
    private final List<Candidate> choices = new ArrayList<>();
    private final boolean relaxed;

    private RoundMatching(Problem problem, int round, Extras extras, List<Integer> middles) {
        this.problem = problem;
        this.round = round;
        this.extras = extras;
        this.middles = middles;
        this.relaxed = false;
        this.fillers = new ArrayList<>();
        int helped = firstMiddle();
        int idle = extras.helpers() > 0 ? problem.helpers() - extras.helpers() : 0;
        fill(problem.students(), problem.students() + problem.helpers(), helped - idle, helped);
        int unjoined = middles.size() - extras.threes();
        int ended = helped + middles.size() + (middles.isEmpty() ? 0 : unjoined);
        fill(helped, helped + middles.size(), helped + middles.size(), ended);
        this.vertices = ended + extras.blanks();
    }

    private RoundMatching(RoundMatching all, boolean relaxed, Predicate<Candidate> kept) {
        this.relaxed = relaxed;
        this.problem = all.problem;
        this.round = all.round;
        this.extras = all.extras;
        this.middles = all.middles;
        this.fillers = all.fillers;
        this.vertices = all.vertices;
        all.choices.stream().filter(kept).forEach(choices::add);
    }

    /** What a pair costs. */
    interface Costs {
        void of(int round, int student, int mate, long[] into);
    }

    /** Joins vertices with those that stand for their being idle. */
    private void fill(int from, int upTo, int idle, int end) {
        for (int one = from; one < upTo; one++) {
            for (int other = idle; other < end; other++) {
                fillers.add(new CostedEdge(one, other, new long[Objective.COUNT + 2]));
            }
        }
    }

    private int firstMiddle() {
        return problem.students() + (extras.helpers() > 0 ? 2 * problem.helpers() - extras.helpers() : 0);
    }

    static RoundMatching of(Problem problem, int round, Extras extras, Costs costs) {
        RoundMatching choices = new RoundMatching(problem, round, extras, middles(problem, round, extras));
        for (int one = 0; one < problem.students(); one++) {
            choices.addPartners(one, costs);
            choices.addMiddles(one, costs);
            for (int blank = choices.vertices - extras.blanks();
                    blank < choices.vertices && !choices.isSet(one);
                    blank++) {
                choices.add(one, blank, problem.blank(), 0, costs);
            }
        }
        return choices;
    }

    private static List<Integer> middles(Problem problem, int round, Extras extras) {
        if (extras.threes() == 0) {
            return List.of();
        }
        List<Integer> knowing = new ArrayList<>();
        List<Integer> fresh = new ArrayList<>();
        for (int one = 0; one < problem.students(); one++) {
            (problem.novices(round).get(one) ? fresh : knowing).add(one);
        }
        int step = Math.max(1, knowing.size() / Math.max(MIDDLES, 2 * extras.threes()));
        Stream<Integer> some = IntStream.range(0, knowing.size())
                .filter(at -> (at + round) % step == 0)
                .mapToObj(knowing::get);
        return Stream.concat(some, newMiddles(problem, round, extras, fresh)).toList();
    }

    /** A few may all be; of many just as many as are needed, others in each round. */
    private static Stream<Integer> newMiddles(Problem problem, int round, Extras extras, List<Integer> fresh) {
        if (extras.watched() == 0) {
            return Stream.of();
        }
        int wanting = extras.threes() - (problem.students() - fresh.size());
        return isFew(problem, round)
                ? fresh.stream()
                : IntStream.range(0, Math.max(0, wanting))
                        .mapToObj(at -> fresh.get((at * fresh.size() / wanting + round) % fresh.size()));
    }

    /** Whether some were left out, so that the choice of least cost may not be the least there is. */
    private boolean isPartial() {
        return extras.threes() > 0 && (middles.size() >= MIDDLES || (extras.watched() > 0 && !isFew(problem, round)));
    }

    private static boolean isFew(Problem problem, int round) {
        return problem.novices(round).cardinality() <= NEW_MIDDLES;
    }

    /** Of many who are new some are set to stand in the middle: so they have a partner who is new, and no other of these. */
    private boolean isSet(int one) {
        return !isFew(problem, round) && problem.novices(round).get(one) && middles.contains(one);
    }

    private void addPartners(int one, Costs costs) {
        int upTo = problem.students() + (extras.helpers() > 0 ? problem.helpers() : 0);
        for (int other = one + 1; other < upTo; other++) {
            boolean set = isSet(one) || (problem.isStudent(other) && isSet(other));
            if (problem.isSafe(round, one, other) && !set) {
                add(one, other, other, 0, costs);
            } else if (extras.watched() > 0
                    && problem.isStudent(other)
                    && problem.mayBeWatched(round, one, other)
                    && !(isSet(one) && isSet(other))) {
                add(one, other, other, priceOfEyes(), costs);
            }
        }
    }

    /** Where all are new there is nothing to choose. */
    private int priceOfEyes() {
        return problem.isNewToAll(round) ? 0 : 1;
    }

    private void addMiddles(int one, Costs costs) {
        for (int at = 0; at < middles.size() && !isSet(one); at++) {
            int middle = middles.get(at);
            boolean fresh = problem.novices(round).get(middle);
            if (one != middle && (fresh ? problem.mayBeWatched(round, one, middle) : !problem.areApart(one, middle))) {
                add(one, firstMiddle() + at, problem.third(middle), fresh ? priceOfEyes() : 0, costs);
            }
        }
    }

    private void add(int one, int vertex, int mate, int price, Costs costs) {
        long[] cost = new long[Objective.COUNT];
        costs.of(round, one, mate, cost);
        choices.add(new Candidate(one, vertex, mate, price, cost));
    }

    /** Only those choices between two that do not differ by more than a gap. */
    private RoundMatching within(long gap) {
        return new RoundMatching(this, relaxed, choice -> choice.costs()[Objective.WIDEST.rank()] <= gap);
    }

    /** Only those choices in which two are partners. */
    RoundMatching forcing(int one, int other) {
        return new RoundMatching(
                this, relaxed, choice -> choice.joins(one, other) || !(choice.touches(one) || choice.touches(other)));
    }

    /** Only those choices in which one joins the pair of another. */
    RoundMatching joining(int one, int middle) {
        return new RoundMatching(
                this, relaxed, choice -> choice.mate() == problem.third(middle) == choice.touches(one));
    }

    /** Only those choices in which two don't work together. */
    RoundMatching parting(int one, int other) {
        return new RoundMatching(
                this,
                relaxed,
                choice -> !choice.joins(one, other)
                        && !(choice.one() == one && choice.mate() == problem.third(other))
                        && !(choice.one() == other && choice.mate() == problem.third(one)));
    }

    /** Only those choices that leave all partners as they are; who has none may be alone or join a pair. */
    RoundMatching keeping(int[] row) {
        return new RoundMatching(
                this,
                relaxed,
                choice -> row[choice.one()] == problem.blank()
                        ? choice.mate() >= problem.blank()
                        : row[choice.one()] == choice.mate());
    }

    /** The same without a look at the two ends of a three, and at how many new ones meet: what costs least of it is a bound. */
    RoundMatching relaxed() {
        return new RoundMatching(this, /* relaxed= */ true, choice -> true);
    }

    /**
     * The partners of least cost, a row of a table.
     *
     * <p>The largest gap is no sum. So it is brought down afterwards, by leaving out wide pairs as long as all that is
     * more important stays as it is.
     *
     * @param floor a largest gap that other rounds have anyway
     * @param chance shakes the choice among equals, if given
     */
    Optional<int[]> least(long floor, Optional<SplittableRandom> chance) {
        return leastRow(floor, chance).map(Least::row);
    }

    /** What the partners of least cost cost; 0 from the first aim on of which it isn't known that it is the least. */
    Optional<long[]> leastCosts(long floor) {
        return leastRow(floor, Optional.empty()).map(least -> {
            long[] costs = costs(least.row());
            Arrays.fill(costs, isPartial() ? 0 : least.known(), Objective.COUNT, 0);
            return costs;
        });
    }

    /** Partners of least cost. */
    private static final class Least {

        private final int[] row;
        private final int known;

        /** @param known how many aims, from the most important on, are the least there are */
        Least(int[] row, int known) {
            this.row = row;
            this.known = known;
        }

        int[] row() {
            return row;
        }

        int known() {
            return known;
        }
    }

    private Optional<Least> leastRow(long floor, Optional<SplittableRandom> chance) {
        Optional<Least> first = lightest(chance);
        if (first.isEmpty() || costs(first.get().row())[Objective.WIDEST.rank()] <= floor) {
            return first;
        }
        long[] gaps = gapsFrom(floor);
        int low = 0;
        int high = Arrays.binarySearch(gaps, costs(first.get().row())[Objective.WIDEST.rank()]);
        Least best = first.get();
        while (low < high) {
            int middle = (low + high) >>> 1;
            Optional<Least> narrower = within(gaps[middle]).lightest(chance);
            if (narrower.isPresent() && asGoodUpToGap(narrower.get().row(), best.row())) {
                best = narrower.get();
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return Optional.of(best);
    }

    private long[] gapsFrom(long floor) {
        LongStream gaps = choices.stream().mapToLong(choice -> choice.costs()[Objective.WIDEST.rank()]);
        return LongStream.concat(LongStream.of(floor), gaps.filter(gap -> gap > floor))
                .sorted()
                .distinct()
                .toArray();
    }

    private boolean asGoodUpToGap(int[] narrower, int[] best) {
        int end = Objective.WIDEST.rank();
        return price(narrower) <= price(best) && Arrays.compare(costs(narrower), 0, end, costs(best), 0, end) <= 0;
    }

    /** The costs of a row. */
    long[] costs(int[] row) {
        long[] sum = new long[Objective.COUNT];
        BitSet counted = new BitSet();
        for (Candidate choice : choices) {
            if (row[choice.one()] == choice.mate() && !counted.get(choice.one())) {
                counted.set(choice.one());
                add(sum, choice.costs());
            }
        }
        return sum;
    }

    private int price(int[] row) {
        return choices.stream()
                .filter(choice -> row[choice.one()] == choice.mate())
                .mapToInt(Candidate::price)
                .sum();
    }

    private static void add(long[] sum, long[] costs) {
        for (int aim = 0; aim < Objective.COUNT; aim++) {
            sum[aim] = aim == Objective.WIDEST.rank() ? Math.max(sum[aim], costs[aim]) : sum[aim] + costs[aim];
        }
    }

    private Optional<Least> lightest(Optional<SplittableRandom> chance) {
        return solved(many(), chance)
                .or(this::any)
                .map(found -> new Least(row(found.mates()), Math.max(0, Math.min(found.known() - 1, Objective.COUNT))));
    }

    /** Where the search for the least came to no end, the round that was found when its numbers were counted. */
    private Optional<LeastCosts.Found> any() {
        return middles.isEmpty() ? Optional.empty() : solved(new long[] {problem.students()}, Optional.empty());
    }

    /** How many choices of a round can have a cost: the price stands first, chance last. */
    private long[] many() {
        long[] edges = new long[Objective.COUNT + 2];
        Arrays.fill(edges, (problem.students() + extras.helpers() + extras.threes() + extras.blanks()) / 2);
        edges[1 + Objective.TURNS.rank()] = extras.helpers();
        edges[1 + Objective.THREES.rank()] = extras.threes();
        edges[1 + Objective.BLANKS.rank()] = extras.blanks();
        return edges;
    }

    private Optional<LeastCosts.Found> solved(long[] many, Optional<SplittableRandom> chance) {
        List<CostedEdge> edges = new ArrayList<>(fillers);
        for (Candidate choice : choices) {
            long[] costs = new long[Objective.COUNT + 2];
            costs[0] = relaxed ? 0 : choice.price();
            System.arraycopy(choice.costs(), 0, costs, 1, Objective.COUNT);
            costs[1 + Objective.WIDEST.rank()] = 0;
            costs[1 + Objective.COUNT] =
                    chance.map(one -> (long) one.nextInt(CHANCE)).orElse(0L);
            edges.add(new CostedEdge(choice.one(), choice.other(), costs));
        }
        return relaxed
                ? LeastCosts.perfect(vertices, edges, many)
                : Branching.perfect(vertices, edges, this::wrongThree, many);
    }

    /** A three in which the two at the ends are kept apart, one in the middle who is no partner to both, or a four. */
    private Optional<Branching.Choice> wrongThree(int[] mates) {
        for (int at = 0; at < middles.size(); at++) {
            int clone = firstMiddle() + at;
            int third = mates[clone];
            int middle = middles.get(at);
            if (problem.isStudent(third)) {
                int partner = mates[middle];
                if (isWrong(third, middle, partner)) {
                    return Optional.of(new Branching.Choice(third, clone, middle, partner));
                }
                int other = firstMiddle() + middles.indexOf(partner);
                if (other >= firstMiddle() && problem.isStudent(mates[other])) {
                    return Optional.of(new Branching.Choice(third, clone, mates[other], other));
                }
            }
        }
        return Optional.empty();
    }

    private boolean isWrong(int third, int middle, int partner) {
        return !problem.isStudent(partner)
                || problem.areApart(third, partner)
                || (problem.novices(round).get(middle)
                        && !problem.novices(round).get(partner));
    }

    private int[] row(int[] mates) {
        int[] row = new int[problem.students()];
        for (int student = 0; student < row.length; student++) {
            int at = mates[student] - firstMiddle();
            row[student] =
                    at < 0 ? mates[student] : at < middles.size() ? problem.third(middles.get(at)) : problem.blank();
        }
        return row;
    }
}
