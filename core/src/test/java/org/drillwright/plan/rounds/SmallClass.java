package org.drillwright.plan.rounds;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Random;
import org.drillwright.plan.roster.BothNew;

/** Small classes drawn by chance, and the same under other numbers. */
final class SmallClass {

    private SmallClass() {}

    /** Drills that change or not, few who know them or many, helpers from whom some are apart, turns had before. */
    static Problem drawn(Random chance) {
        int students = 3 + Math.max(0, chance.nextInt(7) - 3);
        int helpers = chance.nextInt(3);
        int rounds = 1 + chance.nextInt(students > 5 ? 2 : 3);
        boolean same = chance.nextBoolean();
        List<BitSet> novices = new ArrayList<>();
        int often = List.of(0, 2, 3, 6, 8, 9).get(chance.nextInt(6));
        for (int round = 0; round < rounds; round++) {
            BitSet fresh = new BitSet();
            for (int student = 0; student < students; student++) {
                fresh.set(student, chance.nextInt(9) < often);
            }
            novices.add(same && round > 0 ? novices.get(0) : fresh);
        }
        Problem problem = new Problem(students, helpers, novices);
        BothNew two = List.of(BothNew.values()).get(chance.nextInt(3));
        problem.ways(/* thirds= */ chance.nextInt(4) > 0, two, 1 + chance.nextInt(3));
        for (int round = 0; round < rounds; round++) {
            if (chance.nextInt(4) == 0) {
                problem.asking(round);
            }
        }
        boolean training = chance.nextInt(4) == 0;
        for (int one = 0; one < students; one++) {
            problem.had(Objective.TURNS, one, chance.nextInt(3));
            for (int other = one + 1; other < students; other++) {
                problem.cost(Objective.ASKED, one, other, chance.nextInt(2));
                problem.cost(Objective.PAST, one, other, chance.nextInt(4) * chance.nextInt(3));
                int unlike = chance.nextInt(4);
                Problem unused =
                        training ? problem.gap(one, other, unlike) : problem.cost(Objective.LEVEL, one, other, unlike);
                problem.met(one, other, chance.nextInt(8) == 0 ? 1 : 0);
            }
            for (int other = one + 1; other < students + helpers; other++) {
                if (chance.nextInt(8) == 0) {
                    problem.apart(one, other);
                }
            }
        }
        return problem;
    }

    /**
     * The same class, everybody by another number.
     *
     * @param number for each student and helper the new one; helpers stay behind the students
     */
    static Problem relabelled(Problem problem, int[] number) {
        List<BitSet> novices = new ArrayList<>();
        for (int round = 0; round < problem.rounds(); round++) {
            BitSet fresh = new BitSet();
            problem.novices(round).stream().forEach(student -> fresh.set(number[student]));
            novices.add(fresh);
        }
        Problem same = new Problem(problem.students(), problem.helpers(), novices)
                .ways(problem.threes(), problem.bothNew(), problem.eyes());
        for (int round = 0; round < problem.rounds(); round++) {
            if (problem.isAsking(round)) {
                same.asking(round);
            }
        }
        for (int one = 0; one < problem.students(); one++) {
            for (Objective kind : Objective.TURNS_OF_A_KIND) {
                same.had(kind, number[one], problem.hadBefore(kind, one));
            }
            for (int other = one + 1; other < problem.blank(); other++) {
                if (problem.areApart(one, other)) {
                    same.apart(number[one], number[other]);
                }
                if (problem.isStudent(other)) {
                    same.met(number[one], number[other], problem.metBefore(one, other));
                    for (Objective aim : List.of(
                            Objective.ASKED,
                            Objective.GAP,
                            Objective.PAST,
                            Objective.LEVEL,
                            Objective.HANDS,
                            Objective.WIDEST)) {
                        same.cost(aim, number[one], number[other], Math.toIntExact(problem.cost(aim, one, other)));
                    }
                }
            }
        }
        return same;
    }
}
