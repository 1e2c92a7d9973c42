package org.drillwright.print.command.prints;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.drillwright.mark.PrintRecord;
import org.drillwright.mark.Printed;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.write.HeldFile;
import org.drillwright.print.command.write.WholeFile;
import org.drillwright.wording.Message;

/** The file in a school's folder that says what was printed. */
public final class PrintsFile {

    public static final String NAME = "prints.csv";

    private final Path file;

    public PrintsFile(Path school) {
        this.file = school.resolve(NAME);
    }

    /** What was printed so far; refuses, in one sentence, a file that is something else. */
    public PrintRecord read(Invocation run) {
        PrintRecord.Reading reading = PrintRecord.read(text());
        if (reading instanceof PrintRecord.Reading.Foreign foreign) {
            throw new CannotRun(Message.of(PrintsFile.class, "foreign.line", foreign.line(), file, PrintRecord.HEAD));
        }
        PrintRecord.Reading.Done done = (PrintRecord.Reading.Done) reading;
        if (done.torn()) {
            run.say(Message.of(PrintsFile.class, "torn", NAME));
        }
        return done.record();
    }

    private String text() {
        return new String(HeldFile.read(file), StandardCharsets.UTF_8);
    }

    /** Writes down what was printed; the whole file is written beside and moved, so that no line of it is ever torn. */
    public void add(PrintRecord before, List<Printed> more) {
        byte[] bytes = before.with(more).text().getBytes(StandardCharsets.UTF_8);
        try {
            new WholeFile(file).write(bytes);
        } catch (CannotRun problem) {
            throw new CannotRun(Message.of(PrintsFile.class, "no.note", problem.message()));
        }
    }
}
