package org.drillwright.print.command;

import java.nio.file.Path;

/** Prints sheets for tests of other rooms. */
public final class Sheets {

    private Sheets() {}

    /** Runs a command that writes a sheet; its exit code. */
    public static int print(Path here, String... arguments) {
        return Trial.run(here, arguments).code();
    }
}
