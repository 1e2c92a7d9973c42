package org.drillwright.print.command.editor;

import java.util.concurrent.Callable;
import java.util.function.Supplier;
import org.drillwright.print.command.console.BytePipe;
import org.drillwright.print.command.console.Exit;
import org.drillwright.print.command.editor.protocol.Session;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Talks with a text editor until this one ends it. */
@Command(
        name = "language-server",
        header = "The language server: findings, completion and more inside your text editor.",
        description = {
            "Your editor starts it and speaks the Language Server Protocol with it over standard input and"
                    + " output. Each drill is checked as you type, just as in its school.%n",
            "The guide has the lines to add for Neovim, Emacs and Kate.%n"
        },
        sortOptions = false,
        exitCodeListHeading = Exit.HEADING,
        exitCodeList = {"0:the editor ended it as the protocol requires", "1:the editor went away without ending it"})
public final class LanguageServerCommand implements Callable<Integer> {

    private final Supplier<BytePipe> pipe;

    @Option(names = "--stdio", description = "Accepted for editors that add it; it makes no difference.")
    boolean stdio;

    /** @param pipe to the editor, opened when it is needed */
    public LanguageServerCommand(Supplier<BytePipe> pipe) {
        this.pipe = pipe;
    }

    @Override
    public Integer call() {
        BytePipe editor = pipe.get();
        return Session.hold(editor.in(), editor.out()) ? Exit.DONE : Exit.MATERIAL;
    }
}
