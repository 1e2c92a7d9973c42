package org.drillwright.print.command.console;

/** The exit codes of all commands, and how they are told of in the help. */
public final class Exit {

    public static final int DONE = 0;
    public static final int MATERIAL = 1;
    public static final int UNABLE = 2;

    public static final String HEADING = "%nExit code:%n";
    public static final String DONE_TEXT = "0:done";
    public static final String MATERIAL_TEXT =
            "1:something in your files must be corrected first, or what you asked for cannot be done in full;"
                    + " see the help of each command";
    public static final String UNABLE_TEXT =
            "2:could not run: a wrong option, a path that is not there, a place that cannot be written to, a"
                    + " fault in the program";

    private Exit() {}
}
