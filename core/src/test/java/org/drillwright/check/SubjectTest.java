package org.drillwright.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.ref.WeakReference;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Set;
import org.drillwright.model.School;
import org.drillwright.phrase.Replay;
import org.drillwright.read.DrillReader;
import org.drillwright.read.ReadDrill;
import org.drillwright.reading.TurnReader;
import org.junit.jupiter.api.Test;

class SubjectTest {

    private static Subject subject() {
        ReadDrill read = new DrillReader(School.DEFAULT)
                .read("example", "example.yaml", Example.complete("").getBytes(StandardCharsets.UTF_8))
                .value()
                .orElseThrow();
        Surroundings surroundings =
                new Surroundings(School.DEFAULT, TurnReader.standard(), Map.of("example", read.drill()), Set.of());
        return new Subject(read.drill(), read.file(), read.places(), surroundings);
    }

    @Test
    void what_was_played_is_let_go_when_nobody_looks_and_played_again_when_asked() throws InterruptedException {
        Subject subject = subject();
        WeakReference<Replay> played = new WeakReference<>(subject.replay());
        String end = subject.replay().end().toString();
        for (int tries = 0; tries < 100 && !played.refersTo(null); tries++) {
            System.gc();
            Thread.sleep(10);
        }
        assertTrue(played.refersTo(null));
        assertEquals(end, subject.replay().end().toString());
    }

    @Test
    void what_could_be_judged_is_kept() {
        Subject subject = subject();
        Coverage coverage = subject.coverage();
        assertSame(coverage, subject.coverage());
        assertEquals(3, coverage.counts());
    }
}
