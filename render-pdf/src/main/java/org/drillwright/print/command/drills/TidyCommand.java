package org.drillwright.print.command.drills;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.drillwright.formatter.Formatter;
import org.drillwright.formatter.Formatter.LeftAlone;
import org.drillwright.formatter.Formatter.Outcome;
import org.drillwright.formatter.Formatter.Tidied;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.print.command.console.Exit;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.folder.CommandInSchool;
import org.drillwright.print.command.folder.SchoolOption;
import org.drillwright.print.command.folder.Selection;
import org.drillwright.print.command.printing.CountedNoun;
import org.drillwright.print.command.write.WholeFile;
import org.drillwright.read.DrillReader;
import org.drillwright.report.Difference;
import org.drillwright.report.DisplayWidth;
import org.drillwright.school.DrillFiles;
import org.drillwright.school.SchoolFolder.Entry;
import org.drillwright.wording.Message;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Lays out drill files in one way. */
@Command(name = "tidy", sortOptions = false)
public final class TidyCommand extends CommandInSchool {

    @Parameters(paramLabel = "PATH", arity = "0..*")
    List<String> paths = new ArrayList<>();

    @Option(names = "--write")
    boolean write;

    @Option(names = "--check")
    boolean check;

    public TidyCommand(Invocation run, SchoolOption school) {
        super(run, school);
    }

    @Override
    public Integer call() {
        if (write && check) {
            throw new CannotRun(Message.of(TidyCommand.class, "tidy-command.use.write.or.check"));
        }
        return ifSound(
                filled(paths),
                Message.of(TidyCommand.class, "tidy-command.nothing.was.tidied"),
                folder -> tidy(
                        Selection.of(folder, run, paths).entries(), new Formatter(new DrillReader(folder.school()))));
    }

    private int tidy(List<Entry> entries, Formatter tidy) {
        int changed = 0;
        boolean unread = false;
        for (Entry entry : entries) {
            byte[] before = bytes(entry.file());
            Outcome outcome = tidy.of(DrillFiles.id(entry.file()), entry.name(), before);
            if (outcome instanceof Tidied tidied && tidied.changes()) {
                changed++;
                change(entry, before, tidied);
            } else if (outcome instanceof LeftAlone left) {
                run.say(Message.of(
                        TidyCommand.class,
                        "tidy-command.was.left.alone",
                        DisplayWidth.shown(entry.name()),
                        left.why()));
                unread |= entry.subject().isEmpty();
            }
        }
        run.say(sentence(entries.size(), changed));
        return unread || (check && changed > 0) ? Exit.MATERIAL : Exit.DONE;
    }

    private void change(Entry entry, byte[] before, Tidied tidied) {
        if (write) {
            new WholeFile(entry.file()).replace(before, tidied.text());
            run.say(WholeFile.written(DisplayWidth.shown(entry.name())));
        } else if (check) {
            run.say(Message.of(TidyCommand.class, "tidy-command.would.change", DisplayWidth.shown(entry.name())));
        } else {
            run.data().print(Difference.unified(entry.name(), tidied.file().text(), tidied.text()));
        }
    }

    private Message sentence(int all, int changed) {
        Message drills = CountedNoun.of(all, "drill");
        if (changed == 0) {
            return Message.of(TidyCommand.class, "tidy-command.nothing.to.tidy", drills);
        }
        return Message.of(TidyCommand.class, write ? "tidy-command.tidied" : "tidy-command.to.tidy", drills, changed);
    }

    private static byte[] bytes(Path file) {
        try {
            return Files.readAllBytes(file);
        } catch (IOException problem) {
            throw new CannotRun(Message.of(TidyCommand.class, "tidy-command.cannot.be.read", file), problem);
        }
    }
}
