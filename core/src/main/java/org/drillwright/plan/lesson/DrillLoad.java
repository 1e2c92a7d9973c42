package org.drillwright.plan.lesson;

import java.time.Duration;
import java.util.List;
import org.drillwright.model.Drill;
import org.drillwright.model.Form;
import org.drillwright.plan.roster.Timing;
import org.drillwright.plan.roster.Wanted;

/**
 * What a drill asks of a lesson. All is counted in whole seconds and rounded only where it is shown.
 *
 * @param counts of one repetition
 * @param perCount how long a count lasts
 * @param reset back to distance after each repetition
 * @param repetitions of each role with each partner, 1 or more
 * @param roles 2 where leader and follower change over, 1 where they don't, 3 in threes
 * @param rounds partners, 1 or more
 * @param explain showing the drill
 * @param swap between two roles
 * @param change to the next partner
 * @param waves how often a round is worked because the lanes don't hold all pairs at once, 1 or more
 * @param value how much the drill is wanted
 * @param must never left out
 * @param needs ids of drills of the same lesson that have to come before it
 */
public record DrillLoad(
        String drill,
        int counts,
        Duration perCount,
        Duration reset,
        int repetitions,
        int roles,
        int rounds,
        Duration explain,
        Duration swap,
        Duration change,
        int waves,
        int value,
        boolean must,
        List<String> needs) {

    public DrillLoad {
        needs = List.copyOf(needs);
    }

    /**
     * A drill as it stands in the folder, with what the instructor asks of it.
     *
     * @param count how long a count lasts where the drill has no tempo
     * @param rounds partners, where {@code wanted} names no number
     * @param explain showing it, where {@code wanted} names no time
     * @param needs those of the drill's needs that aren't known to everyone who is here
     */
    public static DrillLoad of(
            Drill drill,
            Wanted wanted,
            Duration count,
            Timing timing,
            int rounds,
            Duration explain,
            List<String> needs) {
        return new DrillLoad(
                drill.id(),
                drill.steps().size(),
                drill.tempo().orElse(count),
                timing.reset(),
                wanted.repetitions().orElse(drill.repeat()),
                drill.form() == Form.PARTNER && drill.swap() ? 2 : 1,
                wanted.rounds().orElse(rounds),
                wanted.explain().orElse(explain),
                timing.swap(),
                timing.change(),
                1,
                wanted.value(),
                wanted.must(),
                needs);
    }

    /** Time in which somebody does the drill: repetitions of all roles and waves, without explaining and walking. */
    public Duration practice() {
        return repetition().multipliedBy((long) rounds * waves * roles * repetitions);
    }

    /** Time in which each one does it; while others use the lanes one waits. */
    public Duration own() {
        return practice().dividedBy(waves);
    }

    private Duration repetition() {
        return perCount.multipliedBy(counts).plus(reset);
    }

    /** All the time it takes, from the first word to the last repetition. */
    public Duration total() {
        Duration swaps = swap.multipliedBy((long) rounds * waves * (roles - 1));
        return explain.plus(practice()).plus(swaps).plus(change.multipliedBy(rounds - 1L));
    }

    /** What one repetition less would save. */
    public Duration savedByOneLess() {
        return repetition().multipliedBy((long) rounds * waves * roles);
    }

    public DrillLoad withRounds(int number) {
        return new DrillLoad(
                drill,
                counts,
                perCount,
                reset,
                repetitions,
                roles,
                number,
                explain,
                swap,
                change,
                waves,
                value,
                must,
                needs);
    }

    public DrillLoad withWaves(int number) {
        return new DrillLoad(
                drill,
                counts,
                perCount,
                reset,
                repetitions,
                roles,
                rounds,
                explain,
                swap,
                change,
                number,
                value,
                must,
                needs);
    }

    public DrillLoad withRepetitions(int number) {
        return new DrillLoad(
                drill, counts, perCount, reset, number, roles, rounds, explain, swap, change, waves, value, must,
                needs);
    }
}
