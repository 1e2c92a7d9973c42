package org.drillwright.print.command.folder;

import java.util.Optional;
import org.drillwright.model.Language;
import picocli.CommandLine.Option;
import picocli.CommandLine.ScopeType;

/** The options that every command has; they may stand before the command or after it. */
public final class SchoolOption {

    static final String SPEAK = "--speak";

    @Option(names = "--school", paramLabel = "DIR", scope = ScopeType.INHERIT)
    Optional<String> folder = Optional.empty();

    @Option(names = SPEAK, paramLabel = "LANG", scope = ScopeType.INHERIT)
    Optional<Language> language = Optional.empty();

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            scope = ScopeType.INHERIT)
    boolean help;

    /** The folder that was named, if one was. */
    public Optional<String> folder() {
        return folder;
    }
}
