package org.drillwright.plan.rounds;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.drillwright.plan.roster.BothNew;

/**
 * The slow way to the best table of a small class, written another way than the planner: every way to part the class into
 * groups is made, those of the best kinds are kept, and all sequences of them are tried. Only what a class asks is read.
 */
final class EveryTable {

    /** A group: one alone, one with a helper, two, or three of whom the first works with both others. */
    private static final class Team {

        private final int[] people;
        private final int helper;

        Team(int[] people, int helper) {
            this.people = people;
            this.helper = helper;
        }

        int[] people() {
            return people;
        }

        int helper() {
            return helper;
        }
    }

    private final Problem problem;
    private final List<List<List<Team>>> ways = new ArrayList<>();
    private final List<Extras> kinds = new ArrayList<>();
    private final int[][] met;
    private final int[][] turns;
    private long[] best = {Long.MAX_VALUE};

    EveryTable(Problem problem) {
        this.problem = problem;
        this.met = new int[problem.students()][problem.students()];
        this.turns = new int[4][problem.students()];
        for (int one = 0; one < problem.students(); one++) {
            turns[0][one] = problem.hadBefore(Objective.TURNS, one);
            for (int other = 0; other < problem.students(); other++) {
                met[one][other] = problem.metBefore(one, other);
            }
        }
        for (int round = 0; round < problem.rounds(); round++) {
            keepBest(round);
        }
    }

    /** Helped, thirds, pairs of two new ones and alone of a round, as they are wanted. */
    Extras kinds(int round) {
        return kinds.get(round);
    }

    private void keepBest(int round) {
        List<List<Team>> all = new ArrayList<>();
        part(round, 0, new ArrayList<>(), all);
        boolean newToAll = isNewToAll(round);
        Comparator<Extras> threes = Comparator.comparingInt(Extras::threes);
        Comparator<Extras> eyes = Comparator.comparingInt(Extras::watched);
        Comparator<Extras> kind = newToAll
                ? threes
                : problem.bothNew() == BothNew.WANTED ? threes.thenComparing(eyes) : eyes.thenComparing(threes);
        Comparator<Extras> order =
                Comparator.comparingInt(Extras::blanks).thenComparing(kind).thenComparingInt(Extras::helpers);
        Extras least = all.stream().map(way -> count(round, way)).min(order).orElseThrow();
        kinds.add(least);
        ways.add(all.stream().filter(way -> count(round, way).equals(least)).toList());
    }

    private boolean isNewToAll(int round) {
        for (int one = 0; one < problem.students(); one++) {
            if (!problem.novices(round).get(one)) {
                return false;
            }
        }
        return true;
    }

    private Extras count(int round, List<Team> way) {
        int helped = 0;
        int threes = 0;
        int watched = 0;
        int alone = 0;
        for (Team team : way) {
            helped += team.helper() > 0 ? 1 : 0;
            threes += team.people().length == 3 ? 1 : 0;
            alone += team.people().length == 1 && team.helper() == 0 ? 1 : 0;
            watched += team.people().length > 1 && areNew(round, team.people()) ? team.people().length - 1 : 0;
        }
        return new Extras(helped, threes, watched, alone);
    }

    private boolean areNew(int round, int... people) {
        return Arrays.stream(people).allMatch(one -> problem.novices(round).get(one));
    }

    private void part(int round, int taken, List<Team> way, List<List<Team>> all) {
        int one = Integer.numberOfTrailingZeros(~taken);
        if (one >= problem.students()) {
            if (hasEyesEnough(round, way)) {
                all.add(List.copyOf(way));
            }
            return;
        }
        put(round, taken, new Team(new int[] {one}, 0), way, all);
        for (int helper = problem.students(); helper < problem.blank(); helper++) {
            int free = helper;
            if (way.stream().noneMatch(team -> team.helper() == free) && !problem.areApart(one, helper)) {
                put(round, taken, new Team(new int[] {one}, helper), way, all);
            }
        }
        for (int other = one + 1; other < problem.students(); other++) {
            if ((taken >> other & 1) == 1) {
                continue;
            }
            put(round, taken, new Team(new int[] {one, other}, 0), way, all);
            for (int third = other + 1; third < problem.students() && problem.threes(); third++) {
                if ((taken >> third & 1) == 0) {
                    int[][] orders = {
                        {one, other, third}, {one, third, other}, {other, one, third},
                        {other, third, one}, {third, one, other}, {third, other, one}
                    };
                    for (int[] order : orders) {
                        put(round, taken, new Team(order, 0), way, all);
                    }
                }
            }
        }
    }

    private void put(int round, int taken, Team team, List<Team> way, List<List<Team>> all) {
        if (!mayBe(round, team.people())) {
            return;
        }
        int with = taken;
        for (int person : team.people()) {
            with |= 1 << person;
        }
        way.add(team);
        part(round, with, way, all);
        way.remove(way.size() - 1);
    }

    private boolean mayBe(int round, int[] people) {
        for (int one : people) {
            for (int other : people) {
                if (one != other && problem.areApart(one, other)) {
                    return false;
                }
            }
        }
        if (people.length == 1) {
            return true;
        }
        if (!areNew(round, people)) {
            return people.length == 2 || !problem.novices(round).get(people[0]);
        }
        boolean byChoice = problem.bothNew() == BothNew.WANTED
                || (problem.bothNew() == BothNew.NEEDED
                        && problem.helpers() > 0
                        && (problem.threes() || isNewToAll(round)));
        for (int at = 1; at < people.length && byChoice; at++) {
            byChoice = problem.helpers() == 0 || isSeen(people[0], people[at]);
        }
        return byChoice;
    }

    private boolean isSeen(int one, int other) {
        for (int helper = problem.students(); helper < problem.blank(); helper++) {
            if (!problem.areApart(one, helper) && !problem.areApart(other, helper)) {
                return true;
            }
        }
        return false;
    }

    private boolean hasEyesEnough(int round, List<Team> way) {
        Extras count = count(round, way);
        long posts = way.stream()
                .filter(team -> team.people().length > 1 && areNew(round, team.people()))
                .count();
        return problem.helpers() == 0 || posts <= (long) problem.eyes() * (problem.helpers() - count.helpers());
    }

    /** The least row of costs of all tables. */
    long[] best() {
        go(0, new long[11]);
        return best;
    }

    private void go(int round, long[] costs) {
        if (Arrays.compare(costs, best) >= 0) {
            return;
        }
        if (round == problem.rounds()) {
            best = costs;
            return;
        }
        for (List<Team> way : ways.get(round)) {
            long[] more = costs.clone();
            way.forEach(team -> change(round, team, 1, more));
            go(round + 1, more);
            way.forEach(team -> change(round, team, -1, new long[11]));
        }
    }

    private void change(int round, Team team, int by, long[] costs) {
        int[] people = team.people();
        for (int at = 1; at < people.length; at++) {
            int one = Math.min(people[0], people[at]);
            int other = Math.max(people[0], people[at]);
            costs[1] += met[one][other];
            met[one][other] += by;
            costs[problem.isAsking(round) ? 0 : 10] +=
                    problem.cost(problem.isAsking(round) ? Objective.ASKED : Objective.HANDS, one, other);
            costs[6] += problem.cost(Objective.GAP, one, other);
            costs[7] = Math.max(costs[7], problem.cost(Objective.WIDEST, one, other));
            costs[8] += problem.cost(Objective.PAST, one, other);
            costs[9] += problem.cost(Objective.LEVEL, one, other);
        }
        if (people.length == 3) {
            turn(1, people[2], 3, by, costs);
        }
        if (people.length > 1 && areNew(round, people[0], people[1])) {
            turn(3, people[0], 5, by, costs);
            turn(3, people[1], 5, by, costs);
        }
        if (people.length == 1) {
            turn(team.helper() > 0 ? 0 : 2, people[0], team.helper() > 0 ? 2 : 4, by, costs);
        }
    }

    private void turn(int kind, int person, int aim, int by, long[] costs) {
        costs[aim] += turns[kind][person];
        turns[kind][person] += by;
    }
}
