package org.drillwright.plan.rounds;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MethodTest {

    @ParameterizedTest(name = "{0} is called {1}")
    @CsvSource({
        "TWO_LINES,two lines,true",
        "RING,ring,true",
        "FACTOR,all rounds at once,false",
        "STEPWISE,round by round,false",
        "EXHAUSTIVE,all tables,false"
    })
    void only_the_movements_are_walked(Method method, String words, boolean walked) {
        assertEquals(words, method.words().english());
        assertEquals(walked, method.isWalked());
    }
}
