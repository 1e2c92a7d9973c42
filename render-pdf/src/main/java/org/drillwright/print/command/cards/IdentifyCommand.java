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
import org.drillwright.print.command.record.PrintsFile;
import org.drillwright.print.command.record.Told;
import org.drillwright.school.SchoolFolder;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Tells a card by its mark. */
@Command(
        name = "identify",
        header = "Says which drill a card in your hand is, from its mark, and whether it is current.",
        description = "The mark is at the foot of the card: 8 characters such as 7K3M-P9RX. It changes with"
                + " every word printed on the card.%n",
        sortOptions = false,
        exitCodeListHeading = Exit.HEADING,
        exitCodeList = {Exit.DONE_TEXT, "1:the settings have errors, and the mark was not looked up", Exit.UNABLE_TEXT})
public final class IdentifyCommand implements Callable<Integer> {

    private final Invocation run;
    private final SchoolOption school;

    @Parameters(
            paramLabel = "SIGN",
            arity = "1..*",
            description = "The mark; capitals, spaces and the hyphen do not matter.")
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
        if (Schools.isRefused(folder, run.out(), run, "The mark was not looked up")) {
            return Exit.MATERIAL;
        }
        run.out().println(new Told(folder, new PrintsFile(folder.root()).read(run)).of(mark));
        return Exit.DONE;
    }
}
