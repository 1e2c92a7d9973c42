package org.drillwright.print.command.folder;

import java.util.Optional;
import org.drillwright.model.Language;
import picocli.CommandLine.Option;
import picocli.CommandLine.ScopeType;

/** The options that every command has; they may stand before the command or after it. */
public final class SchoolOption {

    @Option(
            names = "--school",
            paramLabel = "DIR",
            scope = ScopeType.INHERIT,
            description = "The folder of the school. Normally the nearest folder with a school.yaml, from the"
                    + " current one upwards, or else the only one just below it, or else the current folder.")
    Optional<String> folder = Optional.empty();

    @Option(
            names = "--speak",
            paramLabel = "LANG",
            scope = ScopeType.INHERIT,
            description = "The language that the program speaks: ${COMPLETION-CANDIDATES}. Normally the one that"
                    + " school.yaml names, or else the system's.")
    Optional<Language> language = Optional.empty();

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            scope = ScopeType.INHERIT,
            description = "Shows this help.")
    boolean help;

    /** The language that was named, if one was. */
    public Optional<Language> language() {
        return language;
    }

    /** The folder that was named, if one was. */
    public Optional<String> folder() {
        return folder;
    }
}
