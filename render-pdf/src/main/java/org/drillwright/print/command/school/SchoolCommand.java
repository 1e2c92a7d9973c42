package org.drillwright.print.command.school;

import org.drillwright.print.command.console.Exit;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.folder.CommandInSchool;
import org.drillwright.print.command.folder.SchoolOption;
import org.drillwright.print.command.folder.Schools;
import org.drillwright.report.TextReport;
import org.drillwright.school.SchoolFolder;
import org.drillwright.wording.Message;
import picocli.CommandLine.Command;

/** Shows the settings in force. */
@Command(name = "school", sortOptions = false)
public final class SchoolCommand extends CommandInSchool {

    public SchoolCommand(Invocation run, SchoolOption school) {
        super(run, school);
    }

    @Override
    public Integer call() {
        SchoolFolder folder = opened();
        if (Schools.isUnjudged(folder)) {
            run.out().print(TextReport.of(folder.folderFindings(), run.paint(), run.language()));
            run.say(Message.of(SchoolCommand.class, "school-command.no.settings.are.in"));
            return Exit.MATERIAL;
        }
        run.out().print(SettingsTable.of(folder, run.language()));
        return Exit.DONE;
    }
}
