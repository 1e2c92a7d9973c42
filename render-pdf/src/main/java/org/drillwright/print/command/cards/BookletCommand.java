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
import org.drillwright.print.command.write.Kind;
import org.drillwright.print.command.write.WholeFile;
import org.drillwright.school.SchoolFolder;
import org.drillwright.wording.Message;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Prints the whole school as a booklet. */
@Command(name = "booklet", sortOptions = false)
public final class BookletCommand implements Callable<Integer> {

    private final Invocation run;
    private final SchoolOption school;

    @Option(names = "--pages", paramLabel = "HOW", defaultValue = "folded")
    Binding pages = Binding.FOLDED;

    @Option(names = "--sheet", paramLabel = "SIZE")
    Optional<SheetSize> sheet = Optional.empty();

    @Option(names = "--out", paramLabel = "FILE")
    String out = "booklet.pdf";

    @Mixin
    LanguageOption language = new LanguageOption();

    @Option(names = "--draft")
    boolean draft;

    public BookletCommand(Invocation run, SchoolOption school) {
        this.run = run;
        this.school = school;
    }

    @Override
    public Integer call() {
        Path target = Locations.file(run.here(), out);
        new WholeFile(target).mustBeFree(Kind.PDF);
        SchoolFolder folder = Schools.openFilled(run, new SchoolSearch(run).find(school.folder(), List.of()));
        if (Schools.isRefused(
                folder, run.out(), run, Message.of(BookletCommand.class, "booklet-command.nothing.was.printed"))) {
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
