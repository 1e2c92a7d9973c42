package org.drillwright.check;

import java.util.List;
import org.drillwright.phrase.Replay;

/** What a drill's words were read as, the drill as it was played, and what the phrase refused. */
record Performance(Script script, Replay replay, List<Fault> faults) {

    static Performance of(Subject subject) {
        Performance first = of(subject, Script.read(subject.drill(), subject.reader()));
        return Readings.chosen(subject, first);
    }

    /** The drill played with its words read in just this way. */
    static Performance of(Subject subject, Script script) {
        Replay replay = script.play(subject.drill(), subject.school());
        return new Performance(script, replay, Faults.of(subject, replay));
    }
}
