package org.drillwright.print.command.write;

import java.nio.charset.StandardCharsets;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.folder.Locations;

/** A file to be written, under the name that whoever runs the program gave it. */
public final class NamedFile {

    private final String shown;
    private final WholeFile file;
    private final Kind[] kinds;

    /**
     * Refuses a place that can't be written, before anything is made for it.
     *
     * @param kinds of files that may be replaced there
     */
    public NamedFile(Invocation run, String shown, Kind... kinds) {
        this.shown = shown;
        this.file = new WholeFile(Locations.file(run.here(), shown));
        this.kinds = kinds.clone();
        file.mustBeFree(kinds);
    }

    /** As it was named. */
    public String shown() {
        return shown;
    }

    /** Writes all of it, if the place is still free. */
    public void write(byte[] bytes) {
        file.mustBeFree(kinds);
        file.write(bytes);
    }

    public void write(String text) {
        write(text.getBytes(StandardCharsets.UTF_8));
    }
}
