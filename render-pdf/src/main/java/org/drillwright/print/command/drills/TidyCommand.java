package org.drillwright.print.command.drills;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.print.command.console.Exit;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.folder.SchoolOption;
import org.drillwright.print.command.folder.SchoolSearch;
import org.drillwright.print.command.folder.Schools;
import org.drillwright.print.command.folder.Selection;
import org.drillwright.print.command.printing.Count;
import org.drillwright.print.command.write.TextFile;
import org.drillwright.read.DrillReader;
import org.drillwright.report.Columns;
import org.drillwright.report.Difference;
import org.drillwright.school.DrillFiles;
import org.drillwright.school.SchoolFolder;
import org.drillwright.school.SchoolFolder.Entry;
import org.drillwright.tidy.Tidy;
import org.drillwright.tidy.Tidy.LeftAlone;
import org.drillwright.tidy.Tidy.Outcome;
import org.drillwright.tidy.Tidy.Tidied;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Lays out drill files in one way. */
@Command(name = "tidy", sortOptions = false)
public final class TidyCommand implements Callable<Integer> {

    private final Invocation run;
    private final SchoolOption school;

    @Parameters(paramLabel = "PATH", arity = "0..*")
    List<String> paths = new ArrayList<>();

    @Option(names = "--write")
    boolean write;

    @Option(names = "--check")
    boolean check;

    public TidyCommand(Invocation run, SchoolOption school) {
        this.run = run;
        this.school = school;
    }

    @Override
    public Integer call() {
        if (write && check) {
            throw new CannotRun("Use --write or --check, not both.");
        }
        SchoolFolder folder = Schools.openFilled(run, new SchoolSearch(run).find(school.folder(), paths));
        if (Schools.isRefused(folder, run.out(), run, "Nothing was tidied")) {
            return Exit.MATERIAL;
        }
        return tidy(Selection.of(folder, run, paths).entries(), new Tidy(new DrillReader(folder.school())));
    }

    private int tidy(List<Entry> entries, Tidy tidy) {
        int changed = 0;
        boolean unread = false;
        for (Entry entry : entries) {
            byte[] before = bytes(entry.file());
            Outcome outcome = tidy.of(DrillFiles.id(entry.file()), entry.name(), before);
            if (outcome instanceof Tidied tidied && tidied.changes()) {
                changed++;
                change(entry, before, tidied);
            } else if (outcome instanceof LeftAlone left) {
                run.out().println(Columns.shown(entry.name()) + " was left alone. " + left.why());
                unread |= entry.subject().isEmpty();
            }
        }
        run.out().println(sentence(entries.size(), changed));
        return unread || (check && changed > 0) ? Exit.MATERIAL : Exit.DONE;
    }

    private void change(Entry entry, byte[] before, Tidied tidied) {
        if (write) {
            TextFile.replace(entry.file(), before, tidied.text());
            run.out().println("Written: " + Columns.shown(entry.name()));
        } else if (check) {
            run.out().println("Would change: " + Columns.shown(entry.name()));
        } else {
            run.data().print(Difference.unified(entry.name(), tidied.file().text(), tidied.text()));
        }
    }

    private String sentence(int all, int changed) {
        String drills = Count.of(all, "drill") + ": ";
        if (changed == 0) {
            return drills + "nothing to tidy.";
        }
        return drills + changed + (write ? " tidied." : " to tidy. Nothing was written; use --write for that.");
    }

    private static byte[] bytes(Path file) {
        try {
            return Files.readAllBytes(file);
        } catch (IOException problem) {
            throw new CannotRun("'" + file + "' cannot be read", problem);
        }
    }
}
