package org.drillwright.print.command.console;

/** The exit codes of all commands. */
public final class Exit {

    public static final int DONE = 0;
    public static final int MATERIAL = 1;
    public static final int UNABLE = 2;

    private Exit() {}
}
