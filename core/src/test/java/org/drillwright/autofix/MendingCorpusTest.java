package org.drillwright.autofix;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Stream;
import org.drillwright.check.Corpus;
import org.drillwright.check.Sample;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Mending, tried on whole folders of drills. */
class MendingCorpusTest {

    private static final Corpus SCHOOL = Corpus.exampleSchool();

    static Stream<Sample> samples() {
        return Stream.concat(SCHOOL.samples().stream(), Corpus.correct().samples().stream());
    }

    /** Taking the numbers, a cue or the gear away from a correct drill and mending it leaves nothing to find there. */
    @ParameterizedTest
    @MethodSource("samples")
    void correct_drills_are_left_alone(Sample sample) {
        assertEquals(sample.text(), Autofix.of(sample.subject()));
    }

    @Test
    void most_cues_of_the_example_school_can_be_found_again() {
        int taken = 0;
        int found = 0;
        for (Sample sample : SCHOOL.samples()) {
            String without = sample.text().replaceFirst("(?m)^    distance: .*\n", "");
            Sample spoilt = SCHOOL.judge(sample.id(), without);
            if (spoilt.subject().isPartnerDrill()) {
                taken++;
                String mended = Autofix.of(spoilt.subject());
                assertTrue(
                        mended.equals(without)
                                || SCHOOL.judge(sample.id(), mended).errors().isEmpty(),
                        mended);
                found += mended.equals(without) ? 0 : 1;
            }
        }
        assertTrue(taken >= 15 && found >= taken - 2, found + " of " + taken);
    }
}
