package org.drillwright.print.command.console;

import java.nio.file.Path;

/** Hands things to the programs that the system opens them with. */
public interface Opener {

    /** Opens nothing: for a run that nobody looks at. */
    Opener NONE = new Opener() {
        @Override
        public boolean open(String what) {
            return false;
        }

        @Override
        public boolean edit(Path file) {
            return false;
        }
    };

    /** Opens a web address, or a file by its path; whether some program took it. */
    boolean open(String what);

    /** Opens a file of plain text for writing; whether some program took it. */
    boolean edit(Path file);
}
