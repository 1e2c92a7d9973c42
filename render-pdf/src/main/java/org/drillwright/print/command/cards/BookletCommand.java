package org.drillwright.print.command.cards;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.drillwright.model.CardSize;
import org.drillwright.model.SheetSize;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.print.command.console.Exit;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.folder.Locations;
import org.drillwright.print.command.folder.SchoolOption;
import org.drillwright.print.command.folder.SchoolSearch;
import org.drillwright.print.command.folder.Schools;
import org.drillwright.print.command.packet.PacketRun;
import org.drillwright.print.command.printing.Choices;
import org.drillwright.print.command.printing.Paper;
import org.drillwright.print.command.write.OutputFile;
import org.drillwright.print.impose.Laminate;
import org.drillwright.print.impose.Shift;
import org.drillwright.print.layout.fit.Grid;
import org.drillwright.print.layout.words.Back;
import org.drillwright.school.SchoolFolder;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Prints the whole school as a booklet. */
@Command(
        name = "booklet",
        header = "Prints the whole school as a booklet to read.",
        description = "Cover, contents, a map of the drills and what they need, a page for each drill with its card,"
                + " what the drills work, and an index.%n",
        sortOptions = false,
        exitCodeListHeading = Exit.HEADING,
        exitCodeList = {Exit.DONE_TEXT, Exit.MATERIAL_TEXT, Exit.UNABLE_TEXT})
public final class BookletCommand implements Callable<Integer> {

    private final Invocation run;
    private final SchoolOption school;

    @Option(
            names = "--card",
            paramLabel = "SIZE",
            defaultValue = "a5",
            description = "The size of the cards on the pages: a7, a6, a5; 3x5, 4x6, 5x8 (inches), quarter-letter or"
                    + " half-letter. Normally a5.")
    CardSize card = CardSize.A5;

    @Option(
            names = "--sheet",
            paramLabel = "SIZE",
            description = "The paper: a4, a3, letter or legal. Normally what school.yaml says, or a4.")
    Optional<SheetSize> sheet = Optional.empty();

    @Option(
            names = "--out",
            paramLabel = "FILE",
            description = "The file to write. Normally booklet.pdf, where you are. A PDF of that name is replaced.")
    String out = "booklet.pdf";

    @Option(names = "--draft", description = "Prints drills with errors, too, marked DRAFT.")
    boolean draft;

    public BookletCommand(Invocation run, SchoolOption school) {
        this.run = run;
        this.school = school;
    }

    @Override
    public Integer call() {
        if (card.isForTheWall()) {
            throw new CannotRun("A sheet for the wall leaves no room on a page: choose another --card.");
        }
        Path target = Locations.file(run.here(), out);
        new OutputFile(target).mustBeFree();
        SchoolFolder folder = Schools.openFilled(run, new SchoolSearch(run).find(school.folder(), List.of()));
        if (Schools.isRefused(folder, run.out(), run.paint(), "Nothing was printed")) {
            return Exit.MATERIAL;
        }
        Choices choices =
                new Choices(Grid.of(card), Paper.CARD, Back.NONE, Optional.empty(), Laminate.NONE, Shift.NONE, draft);
        return new PacketRun(run, folder, choices, sheet.orElse(folder.school().sheet())).booklet(target, out)
                ? Exit.DONE
                : Exit.MATERIAL;
    }
}
