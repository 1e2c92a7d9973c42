package org.drillwright.plan.rounds;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.drillwright.plan.match.Edge;
import org.drillwright.plan.match.LexicalWeights;
import org.drillwright.plan.match.Matching;

/**
 * The pairs that one round may choose among, each with its costs, and the choice of least cost. Students come first, then
 * the helpers in use, then one vertex for each student who has to be without a partner.
 */
final class Choices {

    private static final int CHANCE = 8;

    private final Problem problem;
    private final Extras extras;
    private final List<Candidate> choices = new ArrayList<>();

    private Choices(Problem problem, Extras extras) {
        this.problem = problem;
        this.extras = extras;
    }

    /** What a pair costs. */
    interface Costs {
        void of(int student, int mate, long[] into);
    }

    static Choices of(Problem problem, int round, Extras extras, Costs costs) {
        Choices choices = new Choices(problem, extras);
        int helped = problem.students() + extras.helpers();
        for (int one = 0; one < problem.students(); one++) {
            for (int other = one + 1; other < helped; other++) {
                if (problem.permits(round, one, other)) {
                    choices.add(one, other, other, costs);
                }
            }
            for (int blank = 0; blank < extras.blanks(); blank++) {
                choices.add(one, helped + blank, problem.blank(), costs);
            }
        }
        return choices;
    }

    private void add(int one, int vertex, int mate, Costs costs) {
        long[] cost = new long[Aim.COUNT];
        costs.of(one, mate, cost);
        choices.add(new Candidate(one, vertex, cost));
    }

    /** Only those choices between two that do not differ by more than a gap. */
    private Choices within(long gap) {
        Choices fewer = new Choices(problem, extras);
        choices.stream()
                .filter(choice -> choice.costs()[Aim.WIDEST.rank()] <= gap)
                .forEach(fewer.choices::add);
        return fewer;
    }

    /** Only those choices in which two work together. */
    Choices forcing(int one, int other) {
        Choices fewer = new Choices(problem, extras);
        choices.stream()
                .filter(choice -> choice.joins(one, other) || !(choice.touches(one) || choice.touches(other)))
                .forEach(fewer.choices::add);
        return fewer;
    }

    /** Only those choices in which two don't work together. */
    Choices parting(int one, int other) {
        Choices fewer = new Choices(problem, extras);
        choices.stream().filter(choice -> !choice.joins(one, other)).forEach(fewer.choices::add);
        return fewer;
    }

    private Choices withoutRepeats() {
        Choices fewer = new Choices(problem, extras);
        choices.stream()
                .filter(choice -> choice.costs()[Aim.REPEATS.rank()] == 0)
                .forEach(fewer.choices::add);
        return fewer;
    }

    private int vertices() {
        return problem.students() + extras.helpers() + extras.blanks();
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
        Optional<int[]> first = lightest(chance);
        if (first.isEmpty() || costs(first.get())[Aim.WIDEST.rank()] <= floor) {
            return first;
        }
        long[] gaps = gapsFrom(floor);
        int low = 0;
        int high = Arrays.binarySearch(gaps, costs(first.get())[Aim.WIDEST.rank()]);
        int[] best = first.get();
        while (low < high) {
            int middle = (low + high) >>> 1;
            Optional<int[]> narrower = within(gaps[middle]).lightest(chance);
            if (narrower.isPresent() && asGoodUpToGap(narrower.get(), best)) {
                best = narrower.get();
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return Optional.of(best);
    }

    private long[] gapsFrom(long floor) {
        LongStream gaps = choices.stream().mapToLong(choice -> choice.costs()[Aim.WIDEST.rank()]);
        return LongStream.concat(LongStream.of(floor), gaps.filter(gap -> gap > floor))
                .sorted()
                .distinct()
                .toArray();
    }

    private boolean asGoodUpToGap(int[] narrower, int[] best) {
        int end = Aim.WIDEST.rank();
        return Arrays.compare(costs(narrower), 0, end, costs(best), 0, end) <= 0;
    }

    /** The costs of a row. */
    long[] costs(int[] row) {
        long[] sum = new long[Aim.COUNT];
        for (Candidate choice : choices) {
            boolean chosen = row[choice.one()] == mate(choice.other());
            boolean blank = mate(choice.other()) == problem.blank();
            if (chosen && (!blank || choice.other() == problem.students() + extras.helpers())) {
                add(sum, choice.costs());
            }
        }
        return sum;
    }

    private static void add(long[] sum, long[] costs) {
        for (int aim = 0; aim < Aim.COUNT; aim++) {
            sum[aim] = aim == Aim.WIDEST.rank() ? Math.max(sum[aim], costs[aim]) : sum[aim] + costs[aim];
        }
    }

    private int mate(int vertex) {
        return vertex < problem.students() + extras.helpers() ? vertex : problem.blank();
    }

    /** If not all aims fit into the weights, a round without repeats is tried first: then that aim needs no weight. */
    private Optional<int[]> lightest(Optional<SplittableRandom> chance) {
        LexicalWeights weights = weights(chance);
        boolean repeats = choices.stream().anyMatch(choice -> choice.costs()[Aim.REPEATS.rank()] > 0);
        if (repeats && weights.levels() < Aim.COUNT) {
            Choices fresh = withoutRepeats();
            Optional<int[]> row = fresh.solved(fresh.weights(chance), chance);
            if (row.isPresent()) {
                return row;
            }
        }
        return solved(weights, chance);
    }

    /** How many aims, from the most important on, find room in the weights. */
    int known() {
        return Math.min(weights(Optional.empty()).levels(), Aim.COUNT);
    }

    private LexicalWeights weights(Optional<SplittableRandom> chance) {
        long[] most = new long[Aim.COUNT + 1];
        for (Candidate choice : choices) {
            for (int aim = 0; aim < Aim.COUNT; aim++) {
                most[aim] = Math.max(most[aim], choice.costs()[aim]);
            }
        }
        most[Aim.WIDEST.rank()] = 0;
        most[Aim.COUNT] = chance.isPresent() ? CHANCE - 1 : 0;
        long[] edges = new long[Aim.COUNT + 1];
        Arrays.fill(edges, vertices() / 2);
        edges[Aim.TURNS.rank()] = extras.helpers();
        edges[Aim.BLANKS.rank()] = extras.blanks();
        return LexicalWeights.fitting(most, edges);
    }

    private Optional<int[]> solved(LexicalWeights weights, Optional<SplittableRandom> chance) {
        List<Edge> edges = new ArrayList<>();
        for (Candidate choice : choices) {
            long[] costs = Arrays.copyOf(choice.costs(), Aim.COUNT + 1);
            costs[Aim.WIDEST.rank()] = 0;
            costs[Aim.COUNT] = chance.map(one -> (long) one.nextInt(CHANCE)).orElse(0L);
            edges.add(new Edge(choice.one(), choice.other(), weights.of(costs)));
        }
        return Matching.leastWeight(vertices(), edges).map(this::row);
    }

    private int[] row(int[] mates) {
        int[] row = new int[problem.students()];
        for (int student = 0; student < row.length; student++) {
            row[student] = mate(mates[student]);
        }
        return row;
    }
}
