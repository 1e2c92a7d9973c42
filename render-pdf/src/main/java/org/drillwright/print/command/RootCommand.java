package org.drillwright.print.command;

import java.util.concurrent.Callable;
import org.drillwright.print.command.ask.Dialogue;
import org.drillwright.print.command.ask.Done;
import org.drillwright.print.command.console.Exit;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.console.VersionText;
import org.drillwright.print.command.folder.SchoolOption;
import org.drillwright.print.command.folder.SchoolSearch;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** The program without a command: asks on a terminal, shows its usage in a pipe. */
@Command(name = "drillwright", sortOptions = false, versionProvider = VersionText.class)
final class RootCommand implements Callable<Integer> {

    private final Invocation run;

    @Mixin
    final SchoolOption school;

    @Option(
            names = {"-V", "--version"},
            versionHelp = true)
    boolean version;

    @Spec
    CommandSpec spec = CommandSpec.create();

    RootCommand(Invocation run, SchoolOption school) {
        this.run = run;
        this.school = school;
    }

    @Override
    public Integer call() {
        CommandLine line = spec.commandLine();
        if (!run.terminal()) {
            line.usage(line.getErr());
            return Exit.UNABLE;
        }
        new Dialogue(run, new SchoolSearch(run).findForTalk(school.folder()), this::heard).hold();
        return Exit.DONE;
    }

    private Done heard(String... arguments) {
        StringBuilder heard = new StringBuilder();
        int code = Program.run(run.heard(heard), arguments);
        return new Done(code, heard.toString());
    }
}
