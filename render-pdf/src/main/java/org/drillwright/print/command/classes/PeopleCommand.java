package org.drillwright.print.command.classes;

import java.util.List;
import java.util.function.ToIntBiFunction;
import java.util.function.ToIntFunction;
import org.drillwright.plan.roster.Roster;
import org.drillwright.print.command.console.Exit;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.folder.CommandInSchool;
import org.drillwright.print.command.folder.SchoolOption;
import org.drillwright.print.command.planning.ClassRun;
import org.drillwright.print.command.planning.Tonight;

/** A command that has to do with a school's people. What of theirs has errors is shown, and nothing is done. */
abstract class PeopleCommand extends CommandInSchool {

    PeopleCommand(Invocation run, SchoolOption school) {
        super(run, school);
    }

    /**
     * Works for everybody on the roster.
     *
     * @param work tells the exit code
     */
    final int withRoster(ToIntBiFunction<ClassRun, Roster> work) {
        ClassRun opened = ClassRun.of(run, filled());
        return opened.roster().map(roster -> work.applyAsInt(opened, roster)).orElse(Exit.MATERIAL);
    }

    /**
     * Works for one class.
     *
     * @param named its name, or the path of its file
     * @param work tells the exit code
     */
    final int inClass(String named, ToIntFunction<Tonight> work) {
        return ClassRun.of(run, filled(List.of(named)))
                .tonight(named)
                .map(work::applyAsInt)
                .orElse(Exit.MATERIAL);
    }
}
