package org.drillwright.check;

import java.util.List;
import org.drillwright.phrase.Rehearsal;
import org.drillwright.phrase.Replay;
import org.drillwright.phrase.SettingReader;

/** What a drill's words were read as, the drill as it was played, and what the phrase refused. */
record Performance(Script script, Replay replay, List<Fault> faults) {

    static Performance of(Subject subject) {
        Performance first = of(subject, Script.read(subject.drill(), subject.reader()));
        return Readings.chosen(subject, first);
    }

    /** The drill played with its words read in just this way. */
    static Performance of(Subject subject, Script script) {
        Rehearsal.Words words = script.words();
        Replay replay = Rehearsal.play(SettingReader.of(subject.drill(), subject.school(), script.start()), words);
        return new Performance(script, replay, Faults.of(subject, words, replay));
    }
}
