package org.drillwright.print.command.watch.desk;

import java.util.List;
import org.drillwright.phrase.Played;
import org.drillwright.phrase.Replay;
import org.drillwright.phrase.State;

/** The states of a phrase that lie outside its counts. */
public final class Phrase {

    private Phrase() {}

    /** How both are when the closing is over. */
    public static State closed(Replay replay) {
        List<Played> closing = replay.closing();
        return closing.isEmpty()
                ? replay.end()
                : closing.get(closing.size() - 1).after();
    }
}
