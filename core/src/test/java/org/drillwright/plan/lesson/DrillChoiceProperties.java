package org.drillwright.plan.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Duration;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** The choice of drills against a look at every set of them. */
class DrillChoiceProperties {

    private static final Duration CHANGEOVER = Duration.ofSeconds(60);

    @Property(tries = 400)
    void the_choice_is_the_best_of_all(
            @ForAll @IntRange(min = 0, max = 11) int drills,
            @ForAll @IntRange(max = 2400) int room,
            @ForAll long seed) {
        List<DrillLoad> drawn = EveryChoice.drawn(drills, new Random(seed));
        List<DrillLoad> best = EveryChoice.bestOf(drawn, room);
        List<DrillLoad> choice = DrillChoice.of(drawn, Duration.ofSeconds(room), CHANGEOVER);
        assertEquals(Larkspur.ids(best), Larkspur.ids(choice));
    }

    @Property(tries = 100)
    void value_never_falls_as_time_grows(@ForAll @IntRange(min = 1, max = 14) int drills, @ForAll long seed) {
        List<DrillLoad> drawn = EveryChoice.drawn(drills, new Random(seed)).stream()
                .filter(load -> !load.must())
                .toList();
        int before = 0;
        for (int room = 0; room <= 3000; room += 300) {
            int value = DrillChoice.of(drawn, Duration.ofSeconds(room), CHANGEOVER).stream()
                    .mapToInt(DrillLoad::value)
                    .sum();
            assertEquals(Math.max(before, value), value);
            before = value;
        }
    }
}
