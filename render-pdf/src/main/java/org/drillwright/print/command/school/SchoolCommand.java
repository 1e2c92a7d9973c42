package org.drillwright.print.command.school;

import org.drillwright.print.command.console.Exit;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.folder.CommandInSchool;
import org.drillwright.print.command.folder.SchoolOption;
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
        if (folder.isUnjudged()) {
            run.show(folder.folderFindings());
            run.say(Message.of(SchoolCommand.class, "school-command.no.settings.are.in"));
            return Exit.MATERIAL;
        }
        run.out().print(SettingsTable.of(folder, run.language()));
        return Exit.DONE;
    }
}
