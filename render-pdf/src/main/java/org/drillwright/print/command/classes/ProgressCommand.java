package org.drillwright.print.command.classes;

import java.util.Optional;
import org.drillwright.plan.progress.Progress;
import org.drillwright.plan.roster.Knowledge;
import org.drillwright.plan.roster.Naming;
import org.drillwright.plan.roster.Roster;
import org.drillwright.print.command.console.Exit;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.folder.SchoolOption;
import org.drillwright.print.command.folder.SheetOption;
import org.drillwright.print.command.planning.ClassRun;
import org.drillwright.print.command.planning.SheetFile;
import org.drillwright.print.command.planning.TaughtDrills;
import org.drillwright.print.command.write.Kind;
import org.drillwright.print.sheet.HandWord;
import org.drillwright.print.sheet.HandWords;
import org.drillwright.print.sheet.ProgressSheet;
import org.drillwright.report.plan.ProgressText;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Shows who knows what, and what is next. */
@Command(name = "progress", sortOptions = false)
public final class ProgressCommand extends PeopleCommand {

    @Option(names = "--format", paramLabel = "FORMAT", defaultValue = "text")
    TableFormat format = TableFormat.TEXT;

    @Option(names = "--out", paramLabel = "FILE")
    Optional<String> out = Optional.empty();

    @Mixin
    SheetOption sheet = new SheetOption();

    @Mixin
    InitialsOption initials = new InitialsOption();

    public ProgressCommand(Invocation run, SchoolOption school) {
        super(run, school);
    }

    @Override
    public Integer call() {
        boolean table = format == TableFormat.CSV;
        Optional<SheetFile> file = out.filter(name -> !table).map(name -> new SheetFile(run, name));
        TextOrData answer = new TextOrData(run, table, out, Kind.TABLE);
        return withRoster((opened, roster) -> told(opened, roster, file, answer));
    }

    private int told(ClassRun opened, Roster roster, Optional<SheetFile> file, TextOrData answer) {
        Progress progress = Progress.of(
                TaughtDrills.of(opened.folder()),
                roster,
                Knowledge.of(roster, opened.classes().history()));
        if (file.isPresent()) {
            Naming names = initials.of(opened.folder(), roster);
            var settings = opened.folder().school();
            file.get()
                    .write(
                            opened.folder(),
                            HandWords.in(settings.language()).text(HandWord.WHO_KNOWS),
                            faces -> ProgressSheet.pages(progress, names, sheet.of(settings), settings, faces));
        } else {
            answer.tell(() -> ProgressText.of(progress, run.language()), progress::csv);
        }
        return Exit.DONE;
    }
}
