package org.drillwright.print.command.folder;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.ToIntFunction;
import org.drillwright.print.command.console.Exit;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.school.SchoolFolder;
import org.drillwright.wording.Message;

/** A command that has to do with a school, and its ways into the school's folder. */
public abstract class CommandInSchool implements Callable<Integer> {

    protected final Invocation run;
    protected final SchoolOption school;

    protected CommandInSchool(Invocation run, SchoolOption school) {
        this.run = run;
        this.school = school;
    }

    /**
     * The folder of the school that is meant.
     *
     * @param near paths or ids; the first that is a path is where the search begins
     */
    protected final Path root(List<String> near) {
        return new SchoolSearch(run).find(school.folder(), near);
    }

    /** That school, be there drills in it or not. */
    protected final SchoolFolder opened() {
        return Schools.open(run, root(List.of()));
    }

    /** That school, which must have drills in it. */
    protected final SchoolFolder filled() {
        return filled(List.of());
    }

    /** The same, searched from somewhere. */
    protected final SchoolFolder filled(List<String> near) {
        return Schools.openFilled(run, root(near));
    }

    /**
     * Works in a school; if its settings have errors, these are shown instead.
     *
     * @param undone what is left undone then, such as {@code Nothing was printed}
     * @param work tells the exit code
     */
    protected final int ifSound(SchoolFolder folder, Message undone, ToIntFunction<SchoolFolder> work) {
        if (folder.isUnjudged()) {
            run.show(folder.folderFindings());
            run.say(Schools.correctFirst(undone));
            return Exit.MATERIAL;
        }
        return work.applyAsInt(folder);
    }
}
