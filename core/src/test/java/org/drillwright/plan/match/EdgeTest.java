package org.drillwright.plan.match;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class EdgeTest {

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 1_000_000_000})
    void a_weight_from_0_to_the_limit_is_taken(int weight) {
        assertEquals(weight, new Edge(0, 1, weight).weight());
    }

    @ParameterizedTest
    @ValueSource(ints = {-1, 1_000_000_001})
    void any_other_weight_is_refused(int weight) {
        assertEquals(
                "a weight of " + weight,
                assertThrows(IllegalArgumentException.class, () -> new Edge(0, 1, weight))
                        .getMessage());
    }
}
