package org.drillwright.print.command.console;

import java.io.PrintStream;
import org.drillwright.school.SchoolFolder;
import org.drillwright.wording.Message;

/** Says on a terminal how far long work has come, on one line that is wiped at the end; says nothing in a pipe. */
public final class ProgressLine implements SchoolFolder.Progress {

    /** Less than this is done before anybody wonders. */
    private static final int LONG = 200;

    private static final int STRIDE = 20;

    private final PrintStream out;
    private final boolean shown;
    private final Invocation run;
    private final Message doing;

    /** @param doing a word such as {@code Reading} */
    public ProgressLine(Invocation run, Message doing) {
        this.run = run;
        this.out = run.out();
        this.shown = run.terminal();
        this.doing = doing;
    }

    @Override
    public void read(int done, int all) {
        if (!shown || all <= LONG) {
            return;
        }
        String line = run.said(Message.of(ProgressLine.class, "progress", doing, done, all));
        if (done == all) {
            out.print("\r" + " ".repeat(line.length()) + "\r");
        } else if (done % STRIDE == 0) {
            out.print("\r" + line);
            out.flush();
        }
    }
}
