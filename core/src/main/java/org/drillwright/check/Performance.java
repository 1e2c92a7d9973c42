package org.drillwright.check;

import java.util.List;
import org.drillwright.phrase.Rehearsal;
import org.drillwright.phrase.Replay;
import org.drillwright.phrase.SettingReader;

/** What a drill's words were read as, the drill as it was played, and what the phrase refused. */
record Performance(Script script, Rehearsal rehearsal, List<Fault> faults) {

    static Performance of(Subject subject) {
        Script read = Script.read(subject.drill(), subject.reader());
        Rehearsal first = Rehearsal.of(SettingReader.of(subject.drill(), subject.school(), read.start()), read.words());
        return Readings.chosen(subject, read, first);
    }

    Replay replay() {
        return rehearsal.replay();
    }
}
