package org.drillwright.plan.walk;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.drillwright.plan.rounds.Objective;
import org.drillwright.plan.rounds.Problem;

/**
 * Who takes which part in the formings of an evening: as they were dealt at first, then exchanged two by two, within a line
 * and between lines, as long as that makes the evening better. What counts, from the left: pairs that may not be made, hands
 * that are asked for, repeats, changes of line from one forming to the next, turns, past meetings, levels, hands. The
 * passes are counted. Who is new to a drill stays still, if it was so at first.
 */
final class Posting {

    private static final int FORBIDDEN = 0;
    private static final int ASKED = 1;
    private static final int REPEATS = 2;
    private static final int CHANGES = 3;

    /** Turns follow, behind those four; then what is left, in one number. */
    private static final int OTHERS = 2;

    private static final int LASTING = OTHERS + Objective.WATCHED.rank() + 1;

    private static final int PASSES = 20;
    private static final int PASSES_OF_MANY = 4;
    private static final int MANY = 60;

    /** Beginnings in another order. */
    private static final int SHUFFLES = 4;

    /** How often the best of several formings is disturbed, as long as some meet again; and by how many exchanges. */
    private static final int DISTURBED = 80;

    private static final int DISTURBING = 4;

    private final Problem problem;
    private final Meetings meetings;
    private final List<Forming> begun;
    private final List<BitSet> still;
    private final int[][] holder;
    private final int[][] spot;
    private final int[] first;
    private final int[][][] facing;
    private final int[][] met;
    private final int[][] turns;
    private final long[] cost;

    private Posting(Problem problem, Meetings meetings, List<Forming> begun) {
        int students = problem.students();
        this.problem = problem;
        this.meetings = meetings;
        this.begun = begun;
        this.still = new ArrayList<>();
        this.holder = new int[begun.size()][];
        this.spot = new int[begun.size()][students];
        this.first = new int[begun.size()];
        this.facing = new int[begun.size()][][];
        this.met = new int[students][students];
        this.turns = new int[Objective.COUNT][students];
        this.cost = new long[LASTING + 1];
        for (int one = 0; one < students; one++) {
            for (Objective kind : List.of(Objective.TURNS, Objective.BLANKS)) {
                turns[kind.rank()][one] = problem.hadBefore(kind, one);
            }
            turns[Objective.WATCHED.rank()][one] = problem.hadBefore(Objective.WATCHED, one);
            for (int other = 0; other < students; other++) {
                met[one][other] = problem.metBefore(one, other);
            }
        }
        begin();
    }

    private void begin() {
        for (int at = 0; at < begun.size(); at++) {
            Forming forming = begun.get(at);
            holder[at] = forming.holders();
            for (int place = 0; place < holder[at].length; place++) {
                if (problem.isStudent(holder[at][place])) {
                    spot[at][holder[at][place]] = place;
                }
            }
            still.add(still(forming));
            first[at] = forming.from();
            facing[at] = new int[forming.to() - forming.from()][holder[at].length];
            for (int round = forming.from(); round < forming.to(); round++) {
                int[] faces = facing[at][round - forming.from()];
                for (int place = 0; place < holder[at].length; place++) {
                    faces[place] = forming.formation().facing(round - forming.from(), place);
                    if (faces[place] > place) {
                        meet(round, holder[at][place], holder[at][faces[place]], 1);
                    }
                }
            }
        }
        IntStream.range(0, problem.students()).forEach(student -> cost[CHANGES] += changes(student));
    }

    /** Those who are new to one of its drills and stand still. */
    private BitSet still(Forming forming) {
        BitSet fresh = new BitSet();
        for (int round = forming.from(); round < forming.to(); round++) {
            fresh.or(problem.strangers(round));
        }
        BitSet still = new BitSet();
        forming.stays().stream().filter(problem::isStudent).filter(fresh::get).forEach(still::set);
        return still;
    }

    /** The formings with people exchanged until no exchange helps. */
    static Posted once(Problem problem, List<Forming> begun) {
        return new Posting(problem, new Meetings(problem), begun).improved();
    }

    /** The same; of several beginnings the best. */
    static Posted improved(Problem problem, List<Forming> begun) {
        Meetings meetings = new Meetings(problem);
        Posted best = new Posting(problem, meetings, begun).improved();
        for (int seed = 1; seed <= SHUFFLES && problem.students() < MANY; seed++) {
            Posted other = new Posting(problem, meetings, shuffled(problem, begun, new Random(seed))).improved();
            best = other.compareTo(best) < 0 ? other : best;
        }
        return problem.students() < MANY && begun.size() > 1 ? disturbed(problem, meetings, best) : best;
    }

    private static Posted disturbed(Problem problem, Meetings meetings, Posted known) {
        Random random = new Random(problem.students());
        Posted best = known;
        for (int time = 0; time < DISTURBED && best.repeats() > 0; time++) {
            Posting posting = new Posting(problem, meetings, best.formings());
            posting.disturb(random);
            Posted other = posting.improved();
            best = other.compareTo(best) <= 0 ? other : best;
        }
        return best;
    }

    private void disturb(Random random) {
        for (int left = DISTURBING; left > 0; left--) {
            int at = random.nextInt(begun.size());
            int one = random.nextInt(problem.students());
            int other = random.nextInt(problem.students());
            if (one != other && mayExchange(at, one, other)) {
                exchange(at, one, other);
            }
        }
    }

    private static List<Forming> shuffled(Problem problem, List<Forming> formings, Random random) {
        return formings.stream()
                .map(forming -> new Forming(
                        forming.from(),
                        forming.to(),
                        forming.formation(),
                        Stream.of(forming.stays(), forming.moves())
                                .flatMap(line -> shuffled(line, problem, random).stream())
                                .mapToInt(Integer::intValue)
                                .toArray()))
                .toList();
    }

    /** Students change places among each other; helpers and gaps keep theirs. */
    private static List<Integer> shuffled(List<Integer> line, Problem problem, Random random) {
        List<Integer> students =
                new ArrayList<>(line.stream().filter(problem::isStudent).toList());
        Collections.shuffle(students, random);
        List<Integer> shuffled = new ArrayList<>();
        int next = 0;
        for (int vertex : line) {
            shuffled.add(problem.isStudent(vertex) ? students.get(next++) : vertex);
        }
        return shuffled;
    }

    private Posted improved() {
        int passes = problem.students() < MANY ? PASSES : PASSES_OF_MANY;
        boolean helped = true;
        for (int pass = 0; pass < passes && helped; pass++) {
            helped = pass();
        }
        List<Forming> formings = new ArrayList<>();
        for (int at = 0; at < begun.size(); at++) {
            Forming one = begun.get(at);
            formings.add(new Forming(one.from(), one.to(), one.formation(), holder[at]));
        }
        return new Posted(formings, Arrays.stream(cost).boxed().toList());
    }

    /**
     * What came of it.
     *
     * @param cost row of costs, pairs that may not be made first
     */
    record Posted(List<Forming> formings, List<Long> cost) implements Comparable<Posted> {

        Posted {
            formings = List.copyOf(formings);
            cost = List.copyOf(cost);
        }

        @Override
        public int compareTo(Posted other) {
            return Arrays.compare(row(), other.row());
        }

        private long[] row() {
            return cost.stream().mapToLong(Long::longValue).toArray();
        }

        boolean isPermitted() {
            return cost.get(FORBIDDEN) == 0;
        }

        long repeats() {
            return cost.get(REPEATS);
        }
    }

    private boolean pass() {
        boolean helped = false;
        for (int at = 0; at < begun.size(); at++) {
            for (int one = 0; one < problem.students(); one++) {
                for (int other = one + 1; other < problem.students(); other++) {
                    helped |= mayExchange(at, one, other) && exchangeHelps(at, one, other);
                }
            }
        }
        return helped;
    }

    private boolean mayExchange(int at, int one, int other) {
        return mayTake(at, one, spot[at][other]) && mayTake(at, other, spot[at][one]);
    }

    private boolean mayTake(int at, int student, int place) {
        return !still.get(at).get(student) || place < begun.get(at).formation().still();
    }

    private boolean exchangeHelps(int at, int one, int other) {
        long[] before = cost.clone();
        exchange(at, one, other);
        boolean helps = Arrays.compare(cost, before) < 0;
        if (!helps) {
            exchange(at, one, other);
        }
        return helps;
    }

    private void exchange(int at, int one, int other) {
        cost[CHANGES] -= changes(one) + changes(other);
        count(at, spot[at][one], spot[at][other], -1);
        int place = spot[at][one];
        put(at, one, spot[at][other]);
        put(at, other, place);
        count(at, spot[at][one], spot[at][other], 1);
        cost[CHANGES] += changes(one) + changes(other);
    }

    private void put(int at, int student, int place) {
        holder[at][place] = student;
        spot[at][student] = place;
    }

    /** How often somebody changes line. */
    private int changes(int student) {
        int changes = 0;
        for (int at = 1; at < begun.size(); at++) {
            changes += isStill(at - 1, student) == isStill(at, student) ? 0 : 1;
        }
        return changes;
    }

    private boolean isStill(int at, int student) {
        return spot[at][student] < begun.get(at).formation().still();
    }

    /** Adds what the two at some spots make in a forming, or takes it away. */
    private void count(int at, int one, int other, int sign) {
        int round = first[at];
        for (int[] faces : facing[at]) {
            meet(round, holder[at][one], holder[at][faces[one]], sign);
            if (faces[one] != other) {
                meet(round, holder[at][other], holder[at][faces[other]], sign);
            }
            round++;
        }
    }

    private void meet(int round, int one, int other, int sign) {
        if (!problem.isStudent(one) && !problem.isStudent(other)) {
            return;
        }
        int student = Math.min(one, other);
        int mate = Math.max(one, other);
        if (mate == problem.blank()) {
            turn(Objective.BLANKS, student, sign);
            return;
        }
        cost[FORBIDDEN] += meetings.isForbidden(round, student, mate) ? sign : 0;
        if (!problem.isStudent(mate)) {
            turn(Objective.TURNS, student, sign);
            return;
        }
        met[student][mate] += sign;
        cost[REPEATS] += sign > 0 ? met[student][mate] - 1 : -met[student][mate];
        if (meetings.isWatched(round, student, mate)) {
            turn(Objective.WATCHED, student, sign);
            turn(Objective.WATCHED, mate, sign);
        }
        cost[ASKED] += sign * meetings.asked(round, student, mate);
        cost[LASTING] += sign * meetings.lasting(round, student, mate);
    }

    /** The more turns somebody has had, the dearer is one more. */
    private void turn(Objective kind, int student, int sign) {
        int[] had = turns[kind.rank()];
        had[student] += sign;
        cost[OTHERS + kind.rank()] += sign > 0 ? had[student] - 1 : -had[student];
    }
}
