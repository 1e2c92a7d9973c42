package org.drillwright.print.command.school;

import java.util.List;
import java.util.concurrent.Callable;
import org.drillwright.print.command.console.Exit;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.folder.SchoolOption;
import org.drillwright.print.command.folder.SchoolSearch;
import org.drillwright.print.command.folder.Schools;
import org.drillwright.report.TextReport;
import org.drillwright.school.SchoolFolder;
import org.drillwright.wording.Message;
import picocli.CommandLine.Command;

/** Shows the settings in force. */
@Command(name = "school", sortOptions = false)
public final class SchoolCommand implements Callable<Integer> {

    private final Invocation run;
    private final SchoolOption school;

    public SchoolCommand(Invocation run, SchoolOption school) {
        this.run = run;
        this.school = school;
    }

    @Override
    public Integer call() {
        SchoolFolder folder = Schools.open(run, new SchoolSearch(run).find(school.folder(), List.of()));
        if (Schools.isUnjudged(folder)) {
            run.out().print(TextReport.of(folder.folderFindings(), run.paint(), run.language()));
            run.say(Message.of(SchoolCommand.class, "school-command.no.settings.are.in"));
            return Exit.MATERIAL;
        }
        run.out().print(SettingsTable.of(folder, run.language()));
        return Exit.DONE;
    }
}
