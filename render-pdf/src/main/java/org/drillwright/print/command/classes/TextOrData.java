package org.drillwright.print.command.classes;

import java.util.Optional;
import java.util.function.Supplier;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.write.Kind;
import org.drillwright.print.command.write.NamedFile;
import org.drillwright.print.command.write.WholeFile;

/** An answer as text for people, or as data for programs, which may go into a file. */
final class TextOrData {

    private final Invocation run;
    private final boolean data;
    private final Optional<NamedFile> file;

    /**
     * Refuses a place that can't be written before anything is planned.
     *
     * @param data whether programs are to read it
     * @param out the file for the data, if one is wished
     */
    TextOrData(Invocation run, boolean data, Optional<String> out, Kind kind) {
        this.run = run;
        this.data = data;
        this.file = out.filter(name -> data).map(name -> new NamedFile(run, name, kind));
    }

    /** Says it as it was asked for. */
    void tell(Supplier<String> text, Supplier<String> forPrograms) {
        if (!data) {
            run.out().print(text.get());
        } else if (file.isEmpty()) {
            run.data().print(forPrograms.get());
        } else {
            file.get().write(forPrograms.get());
            run.say(WholeFile.written(file.get().shown()));
        }
    }
}
