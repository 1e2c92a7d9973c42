package org.drillwright.print.command.drills;

import org.drillwright.print.command.console.TextFormat;
import picocli.CommandLine.Option;

/** Whom an answer about drills is for. */
final class FormatOption {

    @Option(names = "--format", paramLabel = "FORMAT", defaultValue = "text")
    TextFormat format = TextFormat.TEXT;

    /** How it was asked for once. */
    @Option(names = "--json", hidden = true)
    boolean json;

    boolean isForPrograms() {
        return json || format == TextFormat.JSON;
    }
}
