package org.drillwright.phrase;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Tests whose scenes, given by a static method {@code scenes()}, are played as they stand. */
interface Staged {

    @ParameterizedTest(name = "{0}")
    @MethodSource("scenes")
    default void leads_to_what_was_written(Scene scene) {
        assertEquals(scene.written(), scene.played());
    }
}
