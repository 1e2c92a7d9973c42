package org.drillwright.print.command.cards;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.mark.PrintMark;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.print.command.console.Exit;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.folder.CommandInSchool;
import org.drillwright.print.command.folder.SchoolOption;
import org.drillwright.print.command.prints.CardLookup;
import org.drillwright.print.command.prints.PrintsFile;
import org.drillwright.school.SchoolFolder;
import org.drillwright.wording.Message;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Tells a card by its mark. */
@Command(name = "identify", sortOptions = false)
public final class IdentifyCommand extends CommandInSchool {

    @Parameters(paramLabel = "SIGN", arity = "1..*")
    List<String> signs = new ArrayList<>();

    public IdentifyCommand(Invocation run, SchoolOption school) {
        super(run, school);
    }

    @Override
    public Integer call() {
        String written = String.join(" ", signs);
        PrintMark mark = PrintMark.read(written).orElseThrow(() -> new CannotRun(PrintMark.wrongWith(written)));
        return ifSound(
                filled(),
                Message.of(IdentifyCommand.class, "identify-command.the.mark.was.not"),
                folder -> tell(folder, mark));
    }

    private int tell(SchoolFolder folder, PrintMark mark) {
        run.say(new CardLookup(folder, new PrintsFile(folder.root()).read(run)).of(mark));
        return Exit.DONE;
    }
}
