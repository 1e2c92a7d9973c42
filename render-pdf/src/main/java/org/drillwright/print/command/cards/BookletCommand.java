package org.drillwright.print.command.cards;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.drillwright.model.SheetSize;
import org.drillwright.print.command.console.Exit;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.folder.Locations;
import org.drillwright.print.command.folder.SchoolOption;
import org.drillwright.print.command.folder.SchoolSearch;
import org.drillwright.print.command.folder.Schools;
import org.drillwright.print.command.packet.Binding;
import org.drillwright.print.command.packet.BookletRun;
import org.drillwright.print.command.printing.InLanguage;
import org.drillwright.print.command.write.OutputFile;
import org.drillwright.school.SchoolFolder;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Prints the whole school as a booklet. */
@Command(
        name = "booklet",
        header = "Prints the whole school as a booklet to read.",
        description = "A table of contents, a page for each drill or two facing pages, which drills build on"
                + " which, an index, and what the drills work on.%n",
        sortOptions = false,
        exitCodeListHeading = Exit.HEADING,
        exitCodeList = {
            Exit.DONE_TEXT,
            "1:a drill or the settings have errors, and nothing was printed; with --draft: something cannot be"
                    + " printed at all and was left out",
            Exit.UNABLE_TEXT
        })
public final class BookletCommand implements Callable<Integer> {

    private final Invocation run;
    private final SchoolOption school;

    @Option(
            names = "--pages",
            paramLabel = "HOW",
            defaultValue = "folded",
            description = "folded, two pages on each side of a sheet, for folding and stapling: A5 on A4, half-letter"
                    + " on Letter; single, the same pages one by one, for a screen or a copy shop; or"
                    + " large, one page to a sheet, in type 1.2 times as large. Normally folded.")
    Binding pages = Binding.FOLDED;

    @Option(
            names = "--sheet",
            paramLabel = "SIZE",
            description = "The paper: a4, a3, letter or legal. Normally as set in school.yaml, or a4.")
    Optional<SheetSize> sheet = Optional.empty();

    @Option(
            names = "--out",
            paramLabel = "FILE",
            description = "The file to write. Normally booklet.pdf, in the current folder. A PDF of that name"
                    + " is replaced.")
    String out = "booklet.pdf";

    @Mixin
    LanguageOption language = new LanguageOption();

    @Option(names = "--draft", description = "Also prints drills with errors, marked DRAFT.")
    boolean draft;

    public BookletCommand(Invocation run, SchoolOption school) {
        this.run = run;
        this.school = school;
    }

    @Override
    public Integer call() {
        Path target = Locations.file(run.here(), out);
        new OutputFile(target).mustBeFree();
        SchoolFolder folder = Schools.openFilled(run, new SchoolSearch(run).find(school.folder(), List.of()));
        if (Schools.isRefused(folder, run.out(), run, "Nothing was printed")) {
            return Exit.MATERIAL;
        }
        InLanguage printed = language.open(run, folder);
        return new BookletRun(
                                run,
                                folder,
                                printed,
                                pages,
                                sheet.orElse(folder.school().sheet()),
                                draft)
                        .print(target, out)
                ? Exit.DONE
                : Exit.MATERIAL;
    }
}
