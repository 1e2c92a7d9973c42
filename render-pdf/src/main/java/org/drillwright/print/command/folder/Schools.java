package org.drillwright.print.command.folder;

import java.io.IOException;
import java.nio.file.Path;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.console.ProgressLine;
import org.drillwright.school.SchoolFolder;
import org.drillwright.wording.Message;

/** Opens a school's folder. */
public final class Schools {

    private Schools() {}

    /** The folder, be there drills in it or not. */
    public static SchoolFolder open(Invocation run, Path root) {
        try {
            return SchoolFolder.open(root, new ProgressLine(run, Message.of(Schools.class, "schools.reading")));
        } catch (IOException problem) {
            throw unreadable(root, problem);
        }
    }

    /** The same folder as it is now; what did not change is not judged again. */
    public static SchoolFolder again(Invocation run, SchoolFolder before) {
        try {
            return before.again(new ProgressLine(run, Message.of(Schools.class, "schools.reading")));
        } catch (IOException problem) {
            throw unreadable(before.root(), problem);
        }
    }

    /** What is said of a folder that can't be read. */
    public static CannotRun unreadable(Path root, IOException problem) {
        return new CannotRun(Message.of(Schools.class, "schools.the.folder.cannot.be", root), problem);
    }

    /** The folder, which must have drills in it. */
    public static SchoolFolder openFilled(Invocation run, Path root) {
        SchoolFolder school = open(run, root);
        if (school.entries().isEmpty()) {
            throw new CannotRun(Message.of(Schools.class, "schools.there.is.no.drill", root));
        }
        return school;
    }

    /**
     * What is said where the settings have errors, so that nothing could be judged.
     *
     * @param undone what was left undone, such as {@code Nothing was printed}
     */
    public static Message correctFirst(Message undone) {
        return Message.of(Schools.class, "schools.correct.the.settings.of", undone);
    }
}
