package org.drillwright.print.command.school;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drillwright.model.Language;
import org.drillwright.model.SheetSize;
import org.drillwright.print.command.console.Exit;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.folder.CommandInSchool;
import org.drillwright.print.command.folder.SchoolOption;
import org.drillwright.print.command.folder.SchoolSearch;
import org.drillwright.print.command.write.SchoolSkeleton;
import org.drillwright.print.command.write.WholeFile;
import org.drillwright.school.DrillFiles;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Begins a school. */
@Command(name = "begin", sortOptions = false)
public final class BeginCommand extends CommandInSchool {

    @Parameters(paramLabel = "SCHOOL", arity = "1..*")
    List<String> name = new ArrayList<>();

    @Option(names = "--sheet", paramLabel = "SIZE")
    Optional<SheetSize> sheet = Optional.empty();

    @Option(names = "--language", paramLabel = "TAG", defaultValue = "en")
    Language language = Language.ENGLISH;

    public BeginCommand(Invocation run, SchoolOption school) {
        super(run, school);
    }

    @Override
    public Integer call() {
        Path folder = school.folder().map(new SchoolSearch(run)::existing).orElse(run.here());
        Path file = folder.resolve(DrillFiles.SETTINGS);
        new WholeFile(file)
                .create(SchoolSkeleton.of(
                        String.join(" ", name), sheet.orElseGet(() -> SheetSize.usualIn(run.region())), language));
        run.say(WholeFile.written(file));
        return Exit.DONE;
    }
}
