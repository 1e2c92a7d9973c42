package org.drillwright.print.command.drills;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drillwright.model.DrillSet;
import org.drillwright.print.command.console.Exit;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.folder.CommandInSchool;
import org.drillwright.print.command.folder.SchoolOption;
import org.drillwright.print.command.write.DrillPlace;
import org.drillwright.print.command.write.Skeleton;
import org.drillwright.print.command.write.WholeFile;
import org.drillwright.school.SchoolFolder;
import org.drillwright.wording.Message;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Begins a new drill. */
@Command(name = "new", sortOptions = false)
public final class NewCommand extends CommandInSchool {

    @Parameters(paramLabel = "TITLE", arity = "1..*")
    List<String> title = new ArrayList<>();

    @Option(names = "--level", paramLabel = "LEVEL")
    Optional<String> level = Optional.empty();

    @Option(names = "--solo")
    boolean solo;

    @Option(names = "--set", paramLabel = "SET")
    Optional<String> set = Optional.empty();

    public NewCommand(Invocation run, SchoolOption school) {
        super(run, school);
    }

    @Override
    public Integer call() {
        return ifSound(opened(), Message.of(NewCommand.class, "new-command.no.drill.was.written"), this::write);
    }

    private int write(SchoolFolder folder) {
        Sets sets = new Sets(run, folder);
        Optional<DrillSet> wanted = set.map(sets::listed);
        Skeleton skeleton = Skeleton.of(folder.school(), String.join(" ", title), level, solo);
        Path file = DrillPlace.of(folder, skeleton);
        new WholeFile(file).create(skeleton.text());
        run.say(WholeFile.written(file));
        sets.take(skeleton.id(), wanted);
        run.say(Message.of(NewCommand.class, "new-command.open.it.in.a", skeleton.id()));
        return Exit.DONE;
    }
}
