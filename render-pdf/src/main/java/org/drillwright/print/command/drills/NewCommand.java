package org.drillwright.print.command.drills;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.drillwright.model.DrillSet;
import org.drillwright.print.command.console.Exit;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.folder.SchoolOption;
import org.drillwright.print.command.folder.SchoolSearch;
import org.drillwright.print.command.folder.Schools;
import org.drillwright.print.command.write.DrillPlace;
import org.drillwright.print.command.write.Skeleton;
import org.drillwright.print.command.write.TextFile;
import org.drillwright.school.SchoolFolder;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Begins a new drill. */
@Command(
        name = "new",
        header = "Begins a drill: a short, complete one for you to make your own.",
        description = "The file is named after the title. It goes into the folder named after the level, if"
                + " there is one, or else into the school's folder. An existing file is left alone.%n",
        sortOptions = false,
        exitCodeListHeading = Exit.HEADING,
        exitCodeList = {Exit.DONE_TEXT, "1:settings have errors, and no drill was written", Exit.UNABLE_TEXT})
public final class NewCommand implements Callable<Integer> {

    private final Invocation run;
    private final SchoolOption school;

    @Parameters(paramLabel = "TITLE", arity = "1..*", description = "The drill's title, as it appears on the card.")
    List<String> title = new ArrayList<>();

    @Option(
            names = "--level",
            paramLabel = "LEVEL",
            description = "A level of the school. Normally the first at which blades meet; with --solo the first.")
    Optional<String> level = Optional.empty();

    @Option(names = "--solo", description = "A caller and a class, instead of a leader and a follower.")
    boolean solo;

    @Option(
            names = "--set",
            paramLabel = "SET",
            description = "Adds the drill to the end of this set's list in school.yaml.")
    Optional<String> set = Optional.empty();

    public NewCommand(Invocation run, SchoolOption school) {
        this.run = run;
        this.school = school;
    }

    @Override
    public Integer call() {
        SchoolFolder folder = Schools.open(run, new SchoolSearch(run).find(school.folder(), List.of()));
        if (Schools.isRefused(folder, run.out(), run, "No drill was written")) {
            return Exit.MATERIAL;
        }
        Sets sets = new Sets(run, folder);
        Optional<DrillSet> wanted = set.map(sets::listed);
        Skeleton skeleton = Skeleton.of(folder.school(), String.join(" ", title), level, solo);
        Path file = DrillPlace.of(folder, skeleton);
        TextFile.create(file, skeleton.text());
        run.out().println("Written: " + file);
        sets.take(skeleton.id(), wanted);
        run.out().println("Open it in a text editor and make it your own. Then: drillwright check " + skeleton.id());
        return Exit.DONE;
    }
}
