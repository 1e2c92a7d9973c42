package org.drillwright.plan.rounds;

import java.util.BitSet;
import java.util.List;

/**
 * Who may work with whom, and what each pair costs. Students are numbers from 0; the helpers (instructor, assistants)
 * follow them; {@link #blank()} stands for having no partner.
 */
public final class Problem {

    private final int students;
    private final int helpers;
    private final List<BitSet> novices;
    private final boolean[][] apart;
    private final int[][] met;
    private final int[] turns;
    private final int[] blanks;
    private final long[][][] costs;

    /**
     * @param novices for each round, who is new to its drill; nobody where that does not matter
     */
    public Problem(int students, int helpers, List<BitSet> novices) {
        this.students = students;
        this.helpers = helpers;
        this.novices = List.copyOf(novices);
        this.apart = new boolean[students + helpers][students + helpers];
        this.met = new int[students][students];
        this.turns = new int[students];
        this.blanks = new int[students];
        this.costs = new long[Aim.COUNT][students][students];
    }

    /** Keeps two apart; either may be a helper. */
    public Problem apart(int one, int other) {
        apart[one][other] = true;
        apart[other][one] = true;
        return this;
    }

    /** What a pair costs each time it works together. */
    public Problem cost(Aim aim, int one, int other, int cost) {
        costs[aim.rank()][one][other] = cost;
        costs[aim.rank()][other][one] = cost;
        return this;
    }

    /** How often two worked together earlier today. */
    public Problem met(int one, int other, int times) {
        met[one][other] = times;
        met[other][one] = times;
        return this;
    }

    /** Turns with a helper that a student has had, beyond those of whoever had fewest. */
    public Problem turns(int student, int had) {
        turns[student] = had;
        return this;
    }

    /** Turns without a partner that a student has had. */
    public Problem blanks(int student, int had) {
        blanks[student] = had;
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

    public boolean isStudent(int vertex) {
        return vertex < students;
    }

    BitSet novices(int round) {
        return novices.get(round);
    }

    /** Whether all rounds have the same novices. */
    boolean isUniform() {
        return novices.stream().distinct().count() <= 1;
    }

    /** Whoever is new to the drill of at least one round. */
    BitSet everNovices() {
        BitSet all = new BitSet();
        novices.forEach(all::or);
        return all;
    }

    /** Whether two, students or helpers, may work together in a round; two helpers never do. */
    public boolean permits(int round, int one, int other) {
        boolean bothHelp = !isStudent(one) && !isStudent(other);
        boolean bothNew = novices.get(round).get(one) && novices.get(round).get(other);
        return one != other && !apart[one][other] && !bothHelp && !bothNew;
    }

    long cost(Aim aim, int one, int other) {
        return costs[aim.rank()][one][other];
    }

    int metBefore(int one, int other) {
        return met[one][other];
    }

    int turnsBefore(int student) {
        return turns[student];
    }

    int blanksBefore(int student) {
        return blanks[student];
    }
}
