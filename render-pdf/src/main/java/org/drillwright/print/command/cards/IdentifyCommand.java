package org.drillwright.print.command.cards;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.drillwright.mark.PrintMark;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.print.command.console.Exit;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.folder.SchoolOption;
import org.drillwright.print.command.folder.SchoolSearch;
import org.drillwright.print.command.folder.Schools;
import org.drillwright.print.command.record.CardLookup;
import org.drillwright.print.command.record.PrintsFile;
import org.drillwright.school.SchoolFolder;
import org.drillwright.wording.Message;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Tells a card by its mark. */
@Command(name = "identify", sortOptions = false)
public final class IdentifyCommand implements Callable<Integer> {

    private final Invocation run;
    private final SchoolOption school;

    @Parameters(paramLabel = "SIGN", arity = "1..*")
    List<String> signs = new ArrayList<>();

    public IdentifyCommand(Invocation run, SchoolOption school) {
        this.run = run;
        this.school = school;
    }

    @Override
    public Integer call() {
        String written = String.join(" ", signs);
        PrintMark mark = PrintMark.read(written).orElseThrow(() -> new CannotRun(PrintMark.wrongWith(written)));
        SchoolFolder folder = Schools.openFilled(run, new SchoolSearch(run).find(school.folder(), List.of()));
        if (Schools.isRefused(
                folder, run.out(), run, Message.of(IdentifyCommand.class, "identify-command.the.mark.was.not"))) {
            return Exit.MATERIAL;
        }
        run.say(new CardLookup(folder, new PrintsFile(folder.root()).read(run)).of(mark));
        return Exit.DONE;
    }
}
