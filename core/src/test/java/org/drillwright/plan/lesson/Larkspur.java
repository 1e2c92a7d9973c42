package org.drillwright.plan.lesson;

import java.time.Duration;
import java.util.List;
import org.drillwright.plan.roster.Timing;

/** The five drills of an invented hall, Larkspur, whose times were worked out by hand. */
final class Larkspur {

    static final Timing TIMING = Timing.USUAL;

    static final DrillLoad THRUST = load("D1", 4, 2, 2, 6, 2, 120, 3);
    static final DrillLoad PARRY = load("D2", 6, 2, 2, 6, 3, 180, 5, "D1");
    static final DrillLoad STEP = load("D3", 5, 2, 2, 5, 2, 120, 2);
    static final DrillLoad VOID = load("D4", 8, 2, 4, 5, 3, 180, 8, "D2", "D3");
    static final DrillLoad FREE = load("D5", 10, 1, 5, 4, 3, 60, 4, "D2");
    static final List<DrillLoad> ALL = List.of(THRUST, PARRY, STEP, VOID, FREE);

    private Larkspur() {}

    private static DrillLoad load(
            String id,
            int counts,
            int perCount,
            int reset,
            int repetitions,
            int rounds,
            int explain,
            int value,
            String... needs) {
        return new DrillLoad(
                id,
                counts,
                Duration.ofSeconds(perCount),
                Duration.ofSeconds(reset),
                repetitions,
                2,
                rounds,
                Duration.ofSeconds(explain),
                TIMING.swap(),
                TIMING.change(),
                1,
                value,
                false,
                List.of(needs));
    }

    /** The same drill, which must be in the lesson. */
    static DrillLoad required(DrillLoad load) {
        return changed(load, true, load.needs());
    }

    /** The same drill with other needs. */
    static DrillLoad needing(DrillLoad load, String... needs) {
        return changed(load, load.must(), List.of(needs));
    }

    private static DrillLoad changed(DrillLoad load, boolean must, List<String> needs) {
        return new DrillLoad(
                load.drill(),
                load.counts(),
                load.perCount(),
                load.reset(),
                load.repetitions(),
                load.roles(),
                load.rounds(),
                load.explain(),
                load.swap(),
                load.change(),
                load.waves(),
                load.value(),
                must,
                needs);
    }

    static List<String> ids(List<DrillLoad> loads) {
        return loads.stream().map(DrillLoad::drill).toList();
    }
}
