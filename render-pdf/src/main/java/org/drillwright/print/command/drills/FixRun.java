package org.drillwright.print.command.drills;

import java.util.LinkedHashMap;
import java.util.Map;
import org.drillwright.autofix.Autofix;
import org.drillwright.check.Subject;
import org.drillwright.print.command.ask.Questions;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.folder.Selection;
import org.drillwright.print.command.printing.CountedNoun;
import org.drillwright.print.command.write.WholeFile;
import org.drillwright.report.Difference;
import org.drillwright.school.SchoolFolder.Entry;
import org.drillwright.wording.Message;

/** Shows what can be mended in the chosen drills, and writes it if that is wished. */
final class FixRun {

    /** The text of a file that was read, and what it shall hold. */
    private record Mended(String before, String after) {}

    private final Invocation run;

    FixRun(Invocation run) {
        this.run = run;
    }

    /**
     * Shows the differences, then writes them.
     *
     * @param write whether to write without a question; else a person at a terminal is asked
     * @return whether files were written
     */
    boolean make(Selection selection, boolean write) {
        Map<Entry, Mended> mended = new LinkedHashMap<>();
        for (Entry entry : selection.entries()) {
            entry.subject().ifPresent(subject -> mend(entry, subject, mended));
        }
        if (mended.isEmpty()) {
            run.say(Message.of(FixRun.class, "fixes.nothing.here.can.be"));
            return false;
        }
        boolean wished = write
                || (run.terminal()
                        && new Questions(run)
                                .yes(Message.of(
                                        FixRun.class, "fixes.write.this.into", CountedNoun.of(mended.size(), "file"))));
        if (wished) {
            mended.forEach((entry, both) -> new WholeFile(entry.file()).rewrite(both.before(), both.after()));
        }
        run.say(
                wished
                        ? Message.of(FixRun.class, "fixes.written", CountedNoun.of(mended.size(), "file"))
                        : Message.of(FixRun.class, "fixes.nothing.was.written.use"));
        run.out().println();
        return wished;
    }

    private void mend(Entry entry, Subject subject, Map<Entry, Mended> mended) {
        String text = Autofix.of(subject);
        String before = subject.file().text();
        if (!text.equals(before)) {
            run.out().print(Difference.unified(entry.name(), before, text));
            run.out().println();
            mended.put(entry, new Mended(before, text));
        }
    }
}
