package org.drillwright.print.command.classes;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.drillwright.model.SheetSize;
import org.drillwright.plan.progress.Progress;
import org.drillwright.plan.roster.Knowledge;
import org.drillwright.plan.roster.Naming;
import org.drillwright.plan.roster.Roster;
import org.drillwright.print.command.console.Exit;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.folder.SchoolOption;
import org.drillwright.print.command.planning.ClassRun;
import org.drillwright.print.command.planning.DataFile;
import org.drillwright.print.command.planning.SheetFile;
import org.drillwright.print.command.planning.TaughtDrills;
import org.drillwright.print.command.write.Kind;
import org.drillwright.print.sheet.HandWord;
import org.drillwright.print.sheet.HandWords;
import org.drillwright.print.sheet.ProgressSheet;
import org.drillwright.report.plan.ProgressText;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Shows who knows what, and what is next. */
@Command(name = "progress", sortOptions = false)
public final class ProgressCommand implements Callable<Integer> {

    private final Invocation run;
    private final SchoolOption school;

    @Option(names = "--format", paramLabel = "FORMAT", defaultValue = "text")
    TableFormat format = TableFormat.TEXT;

    @Option(names = "--out", paramLabel = "FILE")
    Optional<String> out = Optional.empty();

    @Option(names = "--sheet", paramLabel = "SIZE")
    Optional<SheetSize> sheet = Optional.empty();

    @Option(names = "--initials")
    boolean initials;

    public ProgressCommand(Invocation run, SchoolOption school) {
        this.run = run;
        this.school = school;
    }

    @Override
    public Integer call() {
        boolean table = format == TableFormat.CSV;
        Optional<SheetFile> file = out.filter(name -> !table).map(name -> new SheetFile(run, name));
        Optional<DataFile> data = out.filter(name -> table).map(name -> new DataFile(run, name, Kind.TABLE));
        ClassRun opened = ClassRun.open(run, school.folder(), List.of());
        return opened.roster().map(roster -> told(opened, roster, file, data)).orElse(Exit.MATERIAL);
    }

    private int told(ClassRun opened, Roster roster, Optional<SheetFile> file, Optional<DataFile> data) {
        Progress progress = Progress.of(
                TaughtDrills.of(opened.folder()),
                roster,
                Knowledge.of(roster, opened.classes().history()));
        if (file.isPresent()) {
            boolean hidden = initials || opened.folder().habits().initials();
            Naming names = hidden ? Naming.initials(roster.names()) : Naming.full();
            var settings = opened.folder().school();
            file.get()
                    .write(
                            opened.folder(),
                            HandWords.in(settings.language()).text(HandWord.WHO_KNOWS),
                            faces -> ProgressSheet.pages(
                                    progress, names, sheet.orElse(settings.sheet()), settings, faces));
        } else if (format == TableFormat.CSV) {
            DataFile.tell(run, data, progress.csv());
        } else {
            run.out().print(ProgressText.of(progress, run.language()));
        }
        return Exit.DONE;
    }
}
