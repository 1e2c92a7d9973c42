package org.drillwright.print.command.planning;

import java.util.Optional;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.folder.Locations;
import org.drillwright.print.command.write.Kind;
import org.drillwright.print.command.write.WholeFile;

/** A file for programs: what is otherwise told on the standard output. */
public final class DataFile {

    private final String shown;
    private final WholeFile file;

    /** Refuses a place that can't be written before anything is planned. */
    public DataFile(Invocation run, String shown, Kind kind) {
        this.shown = shown;
        this.file = new WholeFile(Locations.file(run.here(), shown));
        file.mustBeFree(kind);
    }

    /** Writes a text into the file, or tells it where there is none. */
    public static void tell(Invocation run, Optional<DataFile> place, String text) {
        if (place.isEmpty()) {
            run.data().print(text);
            return;
        }
        place.get().file.write(text);
        run.say(WholeFile.written(place.get().shown));
    }
}
