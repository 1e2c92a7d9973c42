package org.drillwright.print.command;

import org.drillwright.print.command.console.Exit;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.wording.Message;

/** Makes sure that what was written has left: a report that a full disk swallowed is no report. */
final class Delivery {

    private Delivery() {}

    /** Flushes both streams; the code to end with. */
    static int confirm(Invocation run, int code) {
        boolean dataLost = run.data().checkError();
        boolean lost = run.out().checkError() || dataLost;
        if (lost) {
            run.sayWhyNot(Message.of(Delivery.class, "not.delivered"));
        }
        run.err().flush();
        return lost ? Exit.UNABLE : code;
    }
}
