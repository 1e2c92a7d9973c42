package org.drillwright.print.command.classes;

import org.drillwright.plan.roster.Naming;
import org.drillwright.plan.roster.Roster;
import org.drillwright.school.SchoolFolder;
import picocli.CommandLine.Option;

/** Whether a printed sheet hides who is meant. */
final class InitialsOption {

    @Option(names = "--initials")
    boolean initials;

    /** What people are called on it; a school may want initials on everything. */
    Naming of(SchoolFolder folder, Roster roster) {
        return initials || folder.habits().initials() ? Naming.initials(roster.names()) : Naming.full();
    }
}
