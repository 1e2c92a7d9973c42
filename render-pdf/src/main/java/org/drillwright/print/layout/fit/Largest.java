package org.drillwright.print.layout.fit;

import java.util.Optional;
import java.util.function.Function;

/** Finds the largest scale at which something fits. */
public final class Largest {

    private Largest() {}

    /** What fits at the largest scale; nothing if even the floor does not fit. What fits larger must fit smaller. */
    public static <T> Optional<T> fitting(Scale floor, Function<Scale, Optional<T>> made) {
        Optional<T> best = made.apply(floor);
        int fits = 0;
        int tooLarge = best.isEmpty() ? 1 : floor.steps() + 1;
        while (tooLarge - fits > 1) {
            int middle = (fits + tooLarge) / 2;
            Optional<T> tried = made.apply(floor.larger(middle));
            if (tried.isPresent()) {
                best = tried;
                fits = middle;
            } else {
                tooLarge = middle;
            }
        }
        return best;
    }
}
