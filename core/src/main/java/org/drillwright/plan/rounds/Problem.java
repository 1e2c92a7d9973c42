package org.drillwright.plan.rounds;

import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;
import org.drillwright.plan.roster.BothNew;

/**
 * Who may work with whom, and what each pair costs. Students are numbers from 0; the helpers (instructor, assistants)
 * follow them; {@link #blank()} stands for having no partner, and {@link #third} for joining somebody's pair.
 */
public final class Problem {

    private final int students;
    private final int helpers;
    private final List<BitSet> novices;
    private final boolean[][] apart;
    private final int[][] met;
    private final int[][] had;
    private final long[][][] costs;
    private final BitSet asking = new BitSet();
    private final BitSet watched = new BitSet();
    private boolean threes;
    private BothNew bothNew = BothNew.NEVER;
    private int eyes;

    /**
     * @param novices for each round, who is new to its drill; nobody where that does not matter
     */
    public Problem(int students, int helpers, List<BitSet> novices) {
        this.students = students;
        this.helpers = helpers;
        this.novices = List.copyOf(novices);
        this.apart = new boolean[students + helpers][students + helpers];
        this.met = new int[students][students];
        this.had = new int[Objective.COUNT][students];
        this.costs = new long[Objective.COUNT][students][students];
    }

    /**
     * What may be done for those who have no partner: without a word nothing but work alone.
     *
     * @param thirds whether they may join a pair
     * @param two when two who are new may work together
     * @param posts of such pairs that one helper can have an eye on
     */
    public Problem ways(boolean thirds, BothNew two, int posts) {
        threes = thirds;
        bothNew = two;
        eyes = posts;
        return this;
    }

    /** Keeps two apart; either may be a helper. */
    public Problem apart(int one, int other) {
        apart[one][other] = true;
        apart[other][one] = true;
        return this;
    }

    /** What a pair costs each time it works together; a cost of gaps is also how wide the pair is. */
    public Problem cost(Objective aim, int one, int other, int cost) {
        costs[aim.rank()][one][other] = cost;
        costs[aim.rank()][other][one] = cost;
        return aim == Objective.GAP ? cost(Objective.WIDEST, one, other, cost) : this;
    }

    /** How far two are apart in skill; its square is what it costs, so that one wide pair costs more than two narrow ones. */
    public Problem gap(int one, int other, int gap) {
        return cost(Objective.GAP, one, other, gap * gap).cost(Objective.WIDEST, one, other, gap);
    }

    /** Says of a round that its drill asks for left against right. */
    public Problem asking(int round) {
        asking.set(round);
        return this;
    }

    /** How often two worked together earlier today. */
    public Problem met(int one, int other, int times) {
        met[one][other] = times;
        met[other][one] = times;
        return this;
    }

    /** Turns of a kind that a student has had, beyond those of whoever had fewest. */
    public Problem had(Objective kind, int student, int turns) {
        had[kind.rank()][student] = turns;
        return this;
    }

    public int students() {
        return students;
    }

    public int helpers() {
        return helpers;
    }

    public int rounds() {
        return novices.size();
    }

    /** Stands in a table for having no partner. */
    public int blank() {
        return students + helpers;
    }

    /** Stands in a table for joining the pair of a student, who then has two partners. */
    public int third(int middle) {
        return blank() + 1 + middle;
    }

    /** Whose pair is joined; less than 0 if none is. */
    public int joined(int mate) {
        return mate - blank() - 1;
    }

    public boolean isStudent(int vertex) {
        return vertex < students;
    }

    /** Who is new to the drill of a round. */
    public BitSet novices(int round) {
        return novices.get(round);
    }

    /** Those of whom no two may work together in a round. */
    public BitSet strangers(int round) {
        return watched.get(round) ? new BitSet() : novices.get(round);
    }

    /** Whether all rounds are alike: the same novices, and the same asked of hands. */
    boolean isUniform() {
        return IntStream.range(1, rounds())
                .allMatch(round -> isAlike(0, round) && watched.get(0) == watched.get(round));
    }

    /** Whether a round is like another. */
    boolean isAlike(int one, int other) {
        return novices.get(one).equals(novices.get(other)) && asking.get(one) == asking.get(other);
    }

    boolean threes() {
        return threes;
    }

    BothNew bothNew() {
        return bothNew;
    }

    /** How many pairs of two who are new one helper can have an eye on. */
    public int eyes() {
        return eyes;
    }

    /** Lets two who are new work together in a round. */
    void watch(int round) {
        watched.set(round);
    }

    /** Whether nobody at all knows the drill of a round. */
    public boolean isNewToAll(int round) {
        return students > 0 && novices.get(round).cardinality() == students;
    }

    /** Whether both are new to the drill of a round. */
    public boolean areBothNew(int round, int one, int other) {
        return novices.get(round).get(one) && novices.get(round).get(other);
    }

    /** Whether two are kept apart. */
    public boolean areApart(int one, int other) {
        return apart[one][other];
    }

    /** Whether two, students or helpers, may work together in a round; two helpers never do. */
    public boolean permits(int round, int one, int other) {
        return isSafe(round, one, other) || (watched.get(round) && mayBeWatched(round, one, other));
    }

    /** Whether two may work together and nobody need have an eye on them. */
    boolean isSafe(int round, int one, int other) {
        boolean bothHelp = !isStudent(one) && !isStudent(other);
        return one != other && !apart[one][other] && !bothHelp && !areBothNew(round, one, other);
    }

    /** Whether two who are new may work together; where there are helpers, one who isn't kept apart from either has to look. */
    boolean mayBeWatched(int round, int one, int other) {
        return one != other
                && areBothNew(round, one, other)
                && !apart[one][other]
                && (helpers == 0 || mayWatch(one, other));
    }

    private boolean mayWatch(int one, int other) {
        for (int helper = students; helper < students + helpers; helper++) {
            if (!apart[helper][one] && !apart[helper][other]) {
                return true;
            }
        }
        return false;
    }

    /** What a pair costs each time it works together. */
    public long cost(Objective aim, int one, int other) {
        return costs[aim.rank()][one][other];
    }

    /** Whether the drill of a round asks for left against right. */
    public boolean isAsking(int round) {
        return asking.get(round);
    }

    /** How often two worked together earlier today. */
    public int metBefore(int one, int other) {
        return met[one][other];
    }

    /** Turns of a kind that a student has had, beyond those of whoever had fewest. */
    public int hadBefore(Objective kind, int student) {
        return had[kind.rank()][student];
    }
}
