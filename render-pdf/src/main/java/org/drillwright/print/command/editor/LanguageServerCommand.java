package org.drillwright.print.command.editor;

import java.util.concurrent.Callable;
import java.util.function.Supplier;
import org.drillwright.print.command.console.BytePipe;
import org.drillwright.print.command.console.Exit;
import org.drillwright.print.command.editor.protocol.Session;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Talks with a text editor until this one ends it. */
@Command(name = "language-server", sortOptions = false)
public final class LanguageServerCommand implements Callable<Integer> {

    private final Supplier<BytePipe> pipe;

    @Option(names = "--stdio")
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
