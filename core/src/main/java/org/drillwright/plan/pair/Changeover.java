package org.drillwright.plan.pair;

import java.util.List;
import org.drillwright.plan.walk.Obstacle;

/** One thing that is to be known of how people change over; people and drills by their names in the plan. */
public sealed interface Changeover {

    /** They keep their places in a ring. */
    record Still(List<String> people) implements Changeover {
        public Still {
            people = List.copyOf(people);
        }
    }

    /** All who don't stand still move one place on round the ring. */
    record Ring() implements Changeover {}

    /**
     * A drill for which no lines form, so that the sheet is read.
     *
     * @param together how many have to stand in one line, if that is why
     * @param others how many are left then
     * @param helpers how many who help could stand in a line
     */
    record Unformed(String drill, Obstacle.Why why, int together, int others, int helpers) implements Changeover {}

    /** After a round, counted from 1, some go to the other line; perhaps nobody. */
    record Crossing(int after, List<String> people) implements Changeover {
        public Crossing {
            people = List.copyOf(people);
        }
    }

    /**
     * The line that stays.
     *
     * @param isAll whether it does so in all rounds
     */
    record LineA(Walk walk, boolean isAll) implements Changeover {}

    /** The line that walks, as it begins. */
    record LineB(Walk walk) implements Changeover {}

    /** What somebody does who has nobody opposite: joins a pair, or rests. */
    record Unpaired(boolean joins) implements Changeover {}

    /** Line B moves one post up, perhaps even when the drill changes. */
    record PostUp(boolean isAlways) implements Changeover {}

    /**
     * Nobody walks, everyone reads the sheet.
     *
     * @param isBetter whether more pairs would meet again if the lines walked
     */
    record Read(boolean isBetter) implements Changeover {}
}
