package org.drillwright.print.command.folder;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Path;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.console.ProgressLine;
import org.drillwright.report.TextReport;
import org.drillwright.school.SchoolFolder;

/** Opens a school's folder. */
public final class Schools {

    private Schools() {}

    /** The folder, be there drills in it or not. */
    public static SchoolFolder open(Invocation run, Path root) {
        try {
            return SchoolFolder.open(root, new ProgressLine(run, "Reading"));
        } catch (IOException problem) {
            throw new CannotRun("The folder " + root + " cannot be read", problem);
        }
    }

    /** The same folder as it is now; what did not change is not judged again. */
    public static SchoolFolder again(Invocation run, SchoolFolder before) {
        try {
            return before.again(new ProgressLine(run, "Reading"));
        } catch (IOException problem) {
            throw new CannotRun("The folder " + before.root() + " cannot be read", problem);
        }
    }

    /** The folder, which must have drills in it. */
    public static SchoolFolder openFilled(Invocation run, Path root) {
        SchoolFolder school = open(run, root);
        if (school.entries().isEmpty()) {
            throw new CannotRun("There is no drill in " + root + ": a drill is a text file whose name ends in .yaml.");
        }
        return school;
    }

    /**
     * Whether the settings have errors, so that nothing could be judged; if so they are shown.
     *
     * @param undone what was left undone, such as {@code Nothing was printed}
     */
    public static boolean isRefused(SchoolFolder school, PrintStream to, Invocation run, String undone) {
        boolean unjudged = isUnjudged(school);
        if (unjudged) {
            to.print(TextReport.of(school.folderFindings(), run.paint(), run.language()));
            to.println(undone + ": correct the settings of the school first.");
        }
        return unjudged;
    }

    /** Whether the settings have errors, so that nothing could be judged. */
    public static boolean isUnjudged(SchoolFolder school) {
        return school.isUnjudged();
    }
}
