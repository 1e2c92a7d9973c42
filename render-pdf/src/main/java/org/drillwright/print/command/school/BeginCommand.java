package org.drillwright.print.command.school;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.drillwright.model.Language;
import org.drillwright.model.SheetSize;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.print.command.console.Exit;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.folder.Locations;
import org.drillwright.print.command.folder.SchoolOption;
import org.drillwright.print.command.write.SchoolSkeleton;
import org.drillwright.print.command.write.TextFile;
import org.drillwright.school.DrillFiles;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Begins a school. */
@Command(
        name = "begin",
        header = "Begins a school: writes its settings into the current folder.",
        description = "The settings are a short text file, school.yaml, with remarks that explain each one. A"
                + " folder that already has settings is left alone.%n",
        sortOptions = false,
        exitCodeListHeading = Exit.HEADING,
        exitCodeList = {Exit.DONE_TEXT, Exit.UNABLE_TEXT})
public final class BeginCommand implements Callable<Integer> {

    private final Invocation run;
    private final SchoolOption school;

    @Parameters(
            paramLabel = "SCHOOL",
            arity = "1..*",
            description = "The school's name, as printed on cards and sheets.")
    List<String> name = new ArrayList<>();

    @Option(
            names = "--sheet",
            paramLabel = "SIZE",
            defaultValue = "a4",
            description = "The paper in your printer: a4, a3, letter or legal. Normally a4.")
    SheetSize sheet = SheetSize.A4;

    @Option(
            names = "--language",
            paramLabel = "TAG",
            defaultValue = "en",
            description = "The language of the words the program adds to a card, such as 'Leader', by its tag: en, fr"
                    + " and others. Normally en.")
    Language language = Language.ENGLISH;

    public BeginCommand(Invocation run, SchoolOption school) {
        this.run = run;
        this.school = school;
    }

    @Override
    public Integer call() {
        Path folder = school.folder()
                .map(named -> Locations.existing(run.here(), named)
                        .filter(Files::isDirectory)
                        .orElseThrow(() -> new CannotRun("There is no folder '" + named + "'.")))
                .orElse(run.here());
        Path file = folder.resolve(DrillFiles.SETTINGS);
        TextFile.create(file, SchoolSkeleton.of(String.join(" ", name), sheet, language));
        run.out().println("Written: " + file);
        return Exit.DONE;
    }
}
