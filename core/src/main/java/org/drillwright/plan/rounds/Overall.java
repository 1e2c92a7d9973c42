package org.drillwright.plan.rounds;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.drillwright.plan.match.LeastFlow;
import org.drillwright.plan.proof.FlowProof;
import org.drillwright.plan.proof.Multipliers;

/**
 * What all rounds together cost at least, whichever groups they are of: everybody has a turn in each round, whoever stands in
 * the middle of a three a meeting more; which turns fall into one round isn't looked at. Meetings are sent from each of the
 * two to the other, so each table is such a flow, at twice its cost, and half of the least flow is a bound. Where half is no
 * whole number, the next one is, and nothing is known of what is less important.
 */
final class Overall {

    /** Sums of weights stop here, so that prices of paths don't overflow. */
    private static final long LARGEST = 1L << 58;

    /** Students, squared, times rounds: up to so many the largest gap is brought down too. */
    private static final int SMALL = 20_000;

    /** Aims that arcs have a cost of; the others are known from elsewhere. */
    private static final List<Objective> SENT = List.of(
            Objective.ASKED,
            Objective.REPEATS,
            Objective.TURNS,
            Objective.BLANKS,
            Objective.GAP,
            Objective.PAST,
            Objective.LEVEL,
            Objective.HANDS);

    private final Problem problem;
    private final List<Extras> extras;
    private final int students;
    private final IntPredicate mayBeAlone;
    private final List<Arc> arcs = new ArrayList<>();
    private int wanted;

    /** Turns that may be sent, what the first of them costs, and the aim of which each further one costs 1 more. */
    private static final class Arc {

        private final int from;
        private final int to;
        private final int most;
        private final long[] costs;
        private final Optional<Objective> growing;

        Arc(int from, int to, int most, long[] costs, Optional<Objective> growing) {
            this.from = from;
            this.to = to;
            this.most = most;
            this.costs = costs;
            this.growing = growing;
        }

        int from() {
            return from;
        }

        int to() {
            return to;
        }

        int most() {
            return most;
        }

        long step(Objective aim) {
            return growing.filter(aim::equals).isPresent() ? 1 : 0;
        }

        long first(Objective aim) {
            return costs[aim.rank()];
        }

        /** What so many cost of an aim. */
        long sum(Objective aim, long units) {
            return units * first(aim) + step(aim) * units * (units - 1) / 2;
        }

        /** What the dearest one costs of it. */
        long dearest(Objective aim) {
            return first(aim) + step(aim) * Math.max(0, most - 1);
        }
    }

    /** Twice what is least of each aim, and of how many of {@link #SENT} that is known. */
    private static final class Least {

        private final long[] twice;
        private final int known;
        private final long widest;

        Least(long[] twice, int known, long widest) {
            this.twice = twice;
            this.known = known;
            this.widest = widest;
        }

        boolean isKnown(Objective aim) {
            return SENT.contains(aim) && SENT.indexOf(aim) < known;
        }

        long twice(Objective aim) {
            return twice[aim.rank()];
        }

        long widest() {
            return widest;
        }
    }

    private Overall(Problem problem, List<Extras> extras, IntPredicate mayBeAlone) {
        this.problem = problem;
        this.extras = extras;
        this.students = problem.students();
        this.mayBeAlone = mayBeAlone;
        connect();
    }

    /**
     * A row that no table can be below.
     *
     * @param least another such row, whose numbers of turns are what no table can be below in any case
     * @param mayBeAlone who may have a turn alone
     */
    static Optional<CostVector> of(Problem problem, List<Extras> extras, CostVector least, IntPredicate mayBeAlone) {
        if (problem.rounds() == 0 || problem.students() == 0) {
            return Optional.empty();
        }
        Overall all = new Overall(problem, extras, mayBeAlone);
        return all.least(Long.MAX_VALUE).map(all::narrowed).map(found -> all.row(found, least));
    }

    /** Students send from their number and receive behind all who send; then two each for helpers, being alone, and middles. */
    private void connect() {
        int rounds = problem.rounds();
        int helped = extras.stream().mapToInt(Extras::helpers).sum();
        int alone = extras.stream().mapToInt(Extras::blanks).sum();
        int joined = extras.stream().mapToInt(Extras::threes).sum();
        int helpers = 2 * students;
        int blanks = helpers + 2;
        int middles = blanks + 2;
        wanted = students * rounds + helped + alone + joined;
        both(source(), helpers, helped);
        both(source(), blanks, alone);
        both(source(), middles, joined);
        for (int one = 0; one < students; one++) {
            int student = one;
            both(source(), one, rounds);
            both(middles, one, rounds(round -> extras.get(round).threes() > 0 && mayBeMiddle(round, student)));
            long[] turns = new long[Objective.COUNT];
            turns[Objective.TURNS.rank()] = problem.hadBefore(Objective.TURNS, one);
            both(
                    helpers,
                    one,
                    rounds(round -> extras.get(round).helpers() > 0 && mayBeHelped(round, student)),
                    turns,
                    Objective.TURNS);
            long[] without = new long[Objective.COUNT];
            without[Objective.BLANKS.rank()] = problem.hadBefore(Objective.BLANKS, one);
            both(
                    blanks,
                    one,
                    mayBeAlone.test(one) ? rounds(round -> extras.get(round).blanks() > 0) : 0,
                    without,
                    Objective.BLANKS);
            for (int other = 0; other < students; other++) {
                int mate = other;
                add(
                        one,
                        receiving(other),
                        rounds(round -> problem.permits(round, student, mate)),
                        costs(one, other),
                        Optional.of(Objective.REPEATS));
            }
        }
    }

    private int source() {
        return 2 * students + 6;
    }

    private int sink() {
        return source() + 1;
    }

    /** The place that receives what its like sends. */
    private int receiving(int sending) {
        return sending == source() ? sink() : sending < students ? students + sending : sending + 1;
    }

    private void both(int from, int to, int most) {
        add(from, to, most, new long[Objective.COUNT], Optional.empty());
        add(receiving(to), receiving(from), most, new long[Objective.COUNT], Optional.empty());
    }

    private void both(int pool, int student, int most, long[] costs, Objective growing) {
        add(pool, receiving(student), most, costs, Optional.of(growing));
        add(student, receiving(pool), most, costs, Optional.of(growing));
    }

    private void add(int from, int to, int most, long[] costs, Optional<Objective> growing) {
        if (most > 0) {
            arcs.add(new Arc(from, to, most, costs, growing));
        }
    }

    private int rounds(IntPredicate of) {
        return (int) IntStream.range(0, problem.rounds()).filter(of).count();
    }

    private boolean mayBeMiddle(int round, int student) {
        return extras.get(round).watched() > 0 || !problem.novices(round).get(student);
    }

    private boolean mayBeHelped(int round, int student) {
        return IntStream.range(students, problem.blank()).anyMatch(helper -> problem.permits(round, student, helper));
    }

    /** Hands count in that aim to which all rounds count them. */
    private long[] costs(int one, int other) {
        long[] costs = new long[Objective.COUNT];
        costs[Objective.REPEATS.rank()] = problem.metBefore(one, other);
        int asking = rounds(problem::isAsking);
        for (Objective aim : List.of(
                Objective.ASKED, Objective.GAP, Objective.WIDEST, Objective.PAST, Objective.LEVEL, Objective.HANDS)) {
            boolean counts =
                    aim == Objective.ASKED ? asking == problem.rounds() : aim != Objective.HANDS || asking == 0;
            costs[aim.rank()] = counts ? problem.cost(aim, one, other) : 0;
        }
        return costs;
    }

    /** The least flow over pairs that don't differ by more than a gap. */
    private Optional<Least> least(long gap) {
        List<Arc> narrow =
                arcs.stream().filter(arc -> arc.first(Objective.WIDEST) <= gap).toList();
        long[] factors = factors(narrow);
        List<FlowProof.Way> ways = narrow.stream()
                .map(arc -> new FlowProof.Way(
                        arc.from(),
                        arc.to(),
                        arc.most(),
                        folded(factors, arc, /* steps= */ false),
                        folded(factors, arc, /* steps= */ true)))
                .toList();
        return LeastFlow.of(sink() + 1, source(), sink(), wanted, ways).map(units -> {
            long[] twice = new long[Objective.COUNT];
            for (int at = 0; at < units.length; at++) {
                for (Objective aim : SENT) {
                    twice[aim.rank()] += narrow.get(at).sum(aim, units[at]);
                }
                if (units[at] > 0) {
                    twice[Objective.WIDEST.rank()] = Math.max(
                            twice[Objective.WIDEST.rank()], narrow.get(at).first(Objective.WIDEST));
                }
            }
            return new Least(twice, factors.length, 0);
        });
    }

    /** For as many aims as find room together: one unit of each outweighs all that those behind it can come to. */
    private long[] factors(List<Arc> narrow) {
        long[] most = SENT.stream()
                .mapToLong(aim ->
                        narrow.stream().mapToLong(arc -> arc.dearest(aim)).max().orElse(0))
                .toArray();
        long[] units = new long[most.length];
        Arrays.fill(units, wanted);
        for (int known = most.length; known > 0; known--) {
            long[] factors = new long[known];
            long later = 0;
            for (int level = known - 1; level >= 0 && later < LARGEST; level--) {
                factors[level] = 1 + later;
                long one = Math.multiplyExact(most[level], (long) wanted);
                later = one > 0 && factors[level] > LARGEST / one ? LARGEST : later + factors[level] * one;
            }
            if (later < LARGEST) {
                if (!Multipliers.keepOrder(factors, most, units)) {
                    throw new IllegalStateException("multipliers that bend the order of aims");
                }
                return factors;
            }
        }
        return new long[0];
    }

    private static long folded(long[] factors, Arc arc, boolean steps) {
        long sum = 0;
        for (int level = 0; level < factors.length; level++) {
            Objective aim = SENT.get(level);
            sum += factors[level] * (steps ? arc.step(aim) : arc.first(aim));
        }
        return sum;
    }

    /** Leaves out wide pairs as long as all that is more important stays as it is. */
    private Least narrowed(Least found) {
        long widest = found.twice(Objective.WIDEST);
        if (students * students * problem.rounds() > SMALL
                || !found.isKnown(Objective.GAP)
                || found.twice(Objective.GAP) % 2 != 0) {
            return widest == 0 ? found : new Least(found.twice, Math.min(found.known, SENT.indexOf(Objective.PAST)), 0);
        }
        long[] gaps = arcs.stream()
                .mapToLong(arc -> arc.first(Objective.WIDEST))
                .filter(gap -> gap <= widest)
                .sorted()
                .distinct()
                .toArray();
        Least best = found;
        int low = 0;
        int high = gaps.length - 1;
        while (low < high) {
            int middle = (low + high) >>> 1;
            Optional<Least> narrower = least(gaps[middle])
                    .filter(other -> other.isKnown(Objective.GAP)
                            && Arrays.equals(
                                    other.twice, 0, Objective.WIDEST.rank(), found.twice, 0, Objective.WIDEST.rank()));
            if (narrower.isPresent()) {
                best = narrower.get();
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return new Least(best.twice, best.known, gaps[high]);
    }

    /** What is known, aim by aim; of turns, what holds in any case. */
    private CostVector row(Least found, CostVector least) {
        long[] row = new long[Objective.COUNT];
        boolean going = true;
        for (Objective aim : Objective.values()) {
            boolean asked = aim == Objective.ASKED && rounds(problem::isAsking) < problem.rounds();
            if (asked || (Objective.TURNS_OF_A_KIND.contains(aim) && !(going && found.isKnown(aim)))) {
                row[aim.rank()] = least.of(aim);
            } else if (aim == Objective.WIDEST) {
                row[aim.rank()] = going ? found.widest() : 0;
            } else if (going && found.isKnown(aim)) {
                row[aim.rank()] = (found.twice(aim) + 1) / 2;
                going = found.twice(aim) % 2 == 0;
            } else {
                going = false;
            }
        }
        return CostVector.of(row);
    }
}
