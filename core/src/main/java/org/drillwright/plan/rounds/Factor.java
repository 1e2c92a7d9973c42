package org.drillwright.plan.rounds;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.drillwright.plan.match.CostedEdge;
import org.drillwright.plan.match.Edge;
import org.drillwright.plan.match.RegularFactor;

/**
 * All rounds at once, without repeats: the lightest set of pairs in which everyone has as many partners as there are
 * rounds, split into rounds. A second turn with a helper is no repeat. Every table without repeats is such a set, so its
 * cost is a bound for them, and a split proves itself best. Rounds of one that doesn't split are a beginning.
 */
final class Factor {

    /** Vertices of the reduced graph; beyond it the matcher would take longer than a class wants to wait. */
    private static final int LARGEST = 6_000;

    /** Vertices up to which the largest gap is brought down too, and more draws are made for one that splits. */
    private static final int SMALL = 1_500;

    private static final int CHANCE = 8;

    private final Problem problem;
    private final int helpers;
    private final Objective turn;
    private final List<Candidate> pairs;
    private final CostVector least;

    /**
     * What came of it.
     *
     * @param bound below which no table is
     * @param begun rounds of a table; all of them if a split was found
     */
    record Outcome(CostVector bound, List<int[]> begun) {

        Outcome {
            begun = List.copyOf(begun);
        }
    }

    /** @param turn what it is to be with a helper; where thirds stand for helpers, to be one */
    private Factor(Problem problem, int helpers, Objective turn, List<Candidate> pairs, CostVector least) {
        this.least = least;
        this.turn = turn;
        this.problem = problem;
        this.helpers = helpers;
        this.pairs = pairs;
    }

    /**
     * Empty where the method does not serve: drills that change who is new, groups other than pairs, repeats that can't be
     * avoided.
     *
     * @param least another bound
     */
    static Optional<Outcome> solve(Problem problem, List<Extras> extras, CostVector least) {
        boolean serves = problem.rounds() > 0 && problem.isUniform() && isOfPairs(problem, extras.get(0));
        if (!serves || problem.students() == 0) {
            return Optional.empty();
        }
        int helpers = extras.get(0).helpers();
        Factor factor = new Factor(problem, helpers, Objective.TURNS, pairs(problem, helpers, Objective.TURNS), least);
        return factor.size() <= LARGEST ? factor.solved() : Optional.empty();
    }

    /**
     * Rounds of a class in which some join pairs as thirds, to begin from; nothing is claimed of them. To be a third counts
     * as a partner, as dear as the cheapest; then each joins the pair that is cheapest.
     */
    static List<int[]> withThirds(Problem problem, List<Extras> extras, CostVector least) {
        boolean serves = problem.rounds() > 0
                && problem.isUniform()
                && extras.stream().distinct().count() == 1
                && extras.get(0).threes() > 0
                && extras.get(0).helpers()
                                + extras.get(0).watched()
                                + extras.get(0).blanks()
                        == 0;
        if (!serves) {
            return List.of();
        }
        int threes = extras.get(0).threes();
        Factor factor = new Factor(problem, threes, Objective.THREES, pairs(problem, threes, Objective.THREES), least);
        return factor.size() <= LARGEST
                ? factor.lightest(Optional.empty())
                        .map(found -> factor.rounds(found.pairs()))
                        .orElse(List.of())
                : List.of();
    }

    /** Whether a round is nothing but pairs, all of one kind, and those with helpers. */
    private static boolean isOfPairs(Problem problem, Extras extras) {
        return extras.blanks() == 0 && extras.threes() == 0 && (extras.watched() == 0 || problem.isNewToAll(0));
    }

    /**
     * Pairs of students; and, as all helpers count alike, one vertex for them together, which a student may meet in each
     * round: each time at the price of one turn more.
     */
    private static List<Candidate> pairs(Problem problem, int helpers, Objective kind) {
        TableCost before = new TableCost(problem);
        List<Candidate> pairs = new ArrayList<>();
        for (int one = 0; one < problem.students(); one++) {
            for (int other = one + 1; other < problem.students(); other++) {
                long[] costs = new long[Objective.COUNT];
                before.cost(0, one, other, costs);
                costs[Objective.WATCHED.rank()] = 0;
                if (problem.permits(0, one, other) && costs[Objective.REPEATS.rank()] == 0) {
                    pairs.add(new Candidate(one, other, other, 0, costs));
                }
            }
            if (kind == Objective.THREES ? helpers > 0 : mayBeHelped(problem, helpers, one)) {
                List<long[]> cheapest = kind == Objective.THREES ? cheapest(problem, one) : List.of();
                for (int turn = 0; turn < problem.rounds(); turn++) {
                    long[] costs = turn < cheapest.size() ? cheapest.get(turn) : new long[Objective.COUNT];
                    costs[kind.rank()] = (long) problem.hadBefore(kind, one) + turn;
                    pairs.add(new Candidate(one, problem.students(), problem.students(), 0, costs));
                }
            }
        }
        return pairs;
    }

    /** What one's partners cost, the cheapest first. */
    private static List<long[]> cheapest(Problem problem, int one) {
        return IntStream.range(0, problem.students())
                .filter(other -> problem.permits(0, one, other))
                .mapToObj(other -> {
                    long[] costs = new long[Objective.COUNT];
                    TableCost.lasting(problem, 0, one, other, costs);
                    return costs;
                })
                .sorted(Arrays::compare)
                .toList();
    }

    private static boolean mayBeHelped(Problem problem, int helpers, int student) {
        return helpers > 0
                && IntStream.range(problem.students(), problem.blank())
                        .anyMatch(helper -> problem.permits(0, student, helper));
    }

    /** How often each vertex is met: students once a round, the helpers' vertex as often as there are helpers. */
    private int[] degrees() {
        int[] degrees = new int[problem.students() + (helpers > 0 ? 1 : 0)];
        Arrays.fill(degrees, problem.rounds());
        if (helpers > 0) {
            degrees[problem.students()] = helpers * problem.rounds();
        }
        return degrees;
    }

    private int size() {
        return (problem.students() + helpers) * problem.rounds() + 2 * pairs.size();
    }

    private Factor within(long gap) {
        List<Candidate> narrow = pairs.stream()
                .filter(pair -> pair.costs()[Objective.WIDEST.rank()] <= gap)
                .toList();
        return new Factor(problem, helpers, turn, narrow, least);
    }

    /** @param known how many aims, from the most important on, are the least there are */
    private record Lightest(List<Candidate> pairs, int known) {}

    private Optional<Outcome> solved() {
        Optional<Lightest> lightest = lightest(Optional.empty());
        if (lightest.isEmpty()) {
            return Optional.empty();
        }
        Factor narrowed = size() <= SMALL ? narrowed(costs(lightest.get().pairs())) : this;
        Lightest chosen = narrowed == this
                ? lightest.get()
                : narrowed.lightest(Optional.empty()).orElseThrow();
        return Optional.of(new Outcome(narrowed.bound(chosen), narrowed.split(chosen.pairs())));
    }

    /** Leaves out wide pairs as long as everything more important than the largest gap stays as it is. */
    private Factor narrowed(long[] costs) {
        long[] gaps = pairs.stream()
                .mapToLong(pair -> pair.costs()[Objective.WIDEST.rank()])
                .filter(gap -> gap <= costs[Objective.WIDEST.rank()])
                .sorted()
                .distinct()
                .toArray();
        Factor best = this;
        int low = 0;
        int high = gaps.length - 1;
        while (low < high) {
            int middle = (low + high) >>> 1;
            Factor narrower = within(gaps[middle]);
            if (narrower.lightest(Optional.empty())
                    .filter(found -> asGood(found.pairs(), costs))
                    .isPresent()) {
                best = narrower;
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return best;
    }

    private static boolean asGood(List<Candidate> found, long[] costs) {
        int end = Objective.WIDEST.rank();
        return Arrays.compare(costs(found), 0, end, costs, 0, end) <= 0;
    }

    private static long[] costs(List<Candidate> chosen) {
        long[] sum = new long[Objective.COUNT];
        for (Candidate pair : chosen) {
            for (int aim = 0; aim < Objective.COUNT; aim++) {
                long cost = pair.costs()[aim];
                sum[aim] = aim == Objective.WIDEST.rank() ? Math.max(sum[aim], cost) : sum[aim] + cost;
            }
        }
        return sum;
    }

    /**
     * Hands go before repeats, and here nobody meets twice: so it is a bound only where hands are as good as they can be.
     * Aims that found no room in the weights, or stand behind a largest gap not brought down, have no bound but 0.
     */
    private CostVector bound(Lightest chosen) {
        long[] costs = costs(chosen.pairs());
        if (costs[Objective.ASKED.rank()] > least.of(Objective.ASKED)) {
            return least;
        }
        int known = Math.min(chosen.known(), Objective.COUNT);
        boolean narrow = size() <= SMALL || costs[Objective.WIDEST.rank()] == 0;
        costs[Objective.WATCHED.rank()] = least.of(Objective.WATCHED);
        Arrays.fill(costs, narrow ? known : Math.min(known, Objective.WIDEST.rank()), Objective.COUNT, 0);
        return CostVector.of(costs);
    }

    private Optional<Lightest> lightest(Optional<SplittableRandom> chance) {
        List<CostedEdge> edges = new ArrayList<>();
        for (Candidate pair : pairs) {
            long[] costs = Arrays.copyOf(pair.costs(), Objective.COUNT + 1);
            costs[Objective.WIDEST.rank()] = 0;
            costs[Objective.COUNT] =
                    chance.map(one -> (long) one.nextInt(CHANCE)).orElse(0L);
            edges.add(new CostedEdge(pair.one(), pair.other(), costs));
        }
        long[] many = new long[Objective.COUNT + 1];
        Arrays.fill(many, (long) (problem.students() + helpers) / 2 * problem.rounds());
        return RegularFactor.cheapest(degrees(), edges, many)
                .map(found ->
                        new Lightest(found.used().stream().mapToObj(pairs::get).toList(), found.known()));
    }

    /** A factor that has no split is drawn again, shaken among equals; the most rounds that any gave. */
    private List<int[]> split(List<Candidate> chosen) {
        List<int[]> most = rounds(chosen);
        SplittableRandom chance = new SplittableRandom(problem.students() + helpers);
        int redraws = size() <= SMALL ? 12 : 1;
        for (int redraw = 0; redraw < redraws && most.size() < problem.rounds(); redraw++) {
            List<int[]> other = lightest(Optional.of(chance))
                    .map(Lightest::pairs)
                    .map(this::rounds)
                    .orElse(List.of());
            most = other.size() > most.size() ? other : most;
        }
        return most;
    }

    private List<int[]> rounds(List<Candidate> chosen) {
        List<Edge> edges = chosen.stream()
                .map(pair -> new Edge(pair.one(), pair.other(), 0))
                .toList();
        return named(RegularFactor.split(
                degrees().length,
                edges,
                problem.rounds(),
                Math.max(1, helpers),
                (student, copy) -> helpers == 0 || mayTake(student, copy)));
    }

    /** Where all helpers are at work, each is one of the copies; else which of them is found afterwards. */
    private boolean mayTake(int student, int copy) {
        return turn == Objective.THREES
                || helpers < problem.helpers()
                || problem.permits(0, student, problem.students() + copy);
    }

    private List<int[]> named(List<int[]> rounds) {
        List<int[]> rows = new ArrayList<>();
        int[] times = new int[problem.helpers()];
        for (int[] round : rounds) {
            int[] row = Arrays.copyOf(round, problem.students());
            boolean whole =
                    turn == Objective.THREES ? join(row, rows) : helpers == problem.helpers() || name(row, times);
            if (whole) {
                rows.add(row);
            }
        }
        return rows;
    }

    /** Lets those who have no partner in a round join the pairs that are cheapest beside the rounds before; whether all can. */
    private boolean join(int[] row, List<int[]> before) {
        PartnerTable table = PartnerTable.empty(problem);
        for (int round = 0; round < before.size(); round++) {
            table = table.with(round, before.get(round));
        }
        TableCost others = TableCost.without(problem, table, -1, before.size());
        Arrays.setAll(row, student -> problem.isStudent(row[student]) ? row[student] : problem.blank());
        for (int third = 0; third < row.length; third++) {
            if (row[third] == problem.blank()) {
                int one = third;
                Optional<Integer> middle = IntStream.range(0, row.length)
                        .filter(student -> mayJoin(row, one, student))
                        .boxed()
                        .min(Comparator.comparing(student -> cost(others, one, student), Arrays::compare));
                if (middle.isEmpty()) {
                    return false;
                }
                row[third] = problem.third(middle.get());
            }
        }
        return true;
    }

    private boolean mayJoin(int[] row, int third, int middle) {
        int partner = row[middle];
        return problem.isStudent(partner)
                && Arrays.stream(row).noneMatch(mate -> mate == problem.third(middle) || mate == problem.third(partner))
                && !problem.novices(0).get(middle)
                && !problem.areApart(third, middle)
                && !problem.areApart(third, partner);
    }

    private long[] cost(TableCost others, int third, int middle) {
        long[] costs = new long[Objective.COUNT];
        others.cost(0, third, problem.third(middle), costs);
        return costs;
    }

    /** Gives those who are helped in a round a helper each, whoever has helped least. */
    private boolean name(int[] row, int[] times) {
        for (int student = 0; student < row.length; student++) {
            if (row[student] >= problem.students()) {
                int one = student;
                Optional<Integer> free = IntStream.range(problem.students(), problem.blank())
                        .filter(helper -> problem.permits(0, one, helper))
                        .filter(helper -> IntStream.range(0, one).noneMatch(other -> row[other] == helper))
                        .boxed()
                        .min(Comparator.comparing(helper -> times[helper - problem.students()]));
                if (free.isEmpty()) {
                    return false;
                }
                row[student] = free.get();
                times[free.get() - problem.students()]++;
            }
        }
        return true;
    }
}
