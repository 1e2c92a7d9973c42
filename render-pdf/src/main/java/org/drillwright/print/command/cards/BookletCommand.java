package org.drillwright.print.command.cards;

import org.drillwright.print.command.console.Exit;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.documents.Binding;
import org.drillwright.print.command.documents.BookletRun;
import org.drillwright.print.command.folder.CommandInSchool;
import org.drillwright.print.command.folder.SchoolOption;
import org.drillwright.print.command.folder.SheetOption;
import org.drillwright.print.command.printing.InLanguage;
import org.drillwright.print.command.write.Kind;
import org.drillwright.print.command.write.NamedFile;
import org.drillwright.school.SchoolFolder;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Prints the whole school as a booklet. */
@Command(name = "booklet", sortOptions = false)
public final class BookletCommand extends CommandInSchool {

    @Option(names = "--pages", paramLabel = "HOW", defaultValue = "folded")
    Binding pages = Binding.FOLDED;

    @Mixin
    SheetOption sheet = new SheetOption();

    @Option(names = "--out", paramLabel = "FILE")
    String out = "booklet.pdf";

    @Mixin
    LanguageOption language = new LanguageOption();

    @Option(names = "--draft")
    boolean draft;

    public BookletCommand(Invocation run, SchoolOption school) {
        super(run, school);
    }

    @Override
    public Integer call() {
        NamedFile file = new NamedFile(run, out, Kind.PDF);
        return ifSound(filled(), CardsCommand.NOTHING_PRINTED, folder -> print(folder, file));
    }

    private int print(SchoolFolder folder, NamedFile file) {
        InLanguage printed = language.open(run, folder);
        return new BookletRun(run, folder, printed, pages, sheet.of(folder.school()), draft).print(file)
                ? Exit.DONE
                : Exit.MATERIAL;
    }
}
