package org.drillwright.print.command.editor;

import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import org.drillwright.print.command.console.BytePipe;
import org.drillwright.print.command.console.Exit;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.editor.protocol.Session;
import org.drillwright.print.command.folder.CommandInSchool;
import org.drillwright.print.command.folder.SchoolOption;
import org.drillwright.print.command.folder.SpokenLanguage;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Talks with a text editor until this one ends it. */
@Command(name = "language-server", sortOptions = false)
public final class LanguageServerCommand extends CommandInSchool {

    private final Supplier<BytePipe> pipe;

    @Option(names = "--stdio")
    boolean stdio;

    /** @param pipe to the editor, opened when it is needed */
    public LanguageServerCommand(Invocation run, SchoolOption school, Supplier<BytePipe> pipe) {
        super(run, school);
        this.pipe = pipe;
    }

    @Override
    public Integer call() {
        BytePipe editor = pipe.get();
        return Session.hold(editor.in(), editor.out(), this::language) ? Exit.DONE : Exit.MATERIAL;
    }

    /** What the editor itself speaks stands in the place of the system's language. */
    private Locale language(Optional<Locale> editors) {
        return editors.map(locale -> new SpokenLanguage(run.in(() -> locale), school).get())
                .orElseGet(run::language);
    }
}
