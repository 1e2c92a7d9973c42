package org.drillwright.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class RunSummaryTest {

    @Test
    void numbers_and_nouns_agree() {
        assertEquals(
                "30 drills: 3 errors, 1 warning, no notes",
                new RunSummary(30, 3, 1, 0).sentence().english());
        assertEquals(
                "1 drill: no errors, no warnings, 2 notes",
                new RunSummary(1, 0, 0, 2).sentence().english());
        assertEquals(
                "no drills: 1 error, 2 warnings, 1 note",
                new RunSummary(0, 1, 2, 1).sentence().english());
    }
}
