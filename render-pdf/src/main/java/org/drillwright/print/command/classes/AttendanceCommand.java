package org.drillwright.print.command.classes;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.drillwright.model.Drill;
import org.drillwright.plan.attendance.Attendance;
import org.drillwright.plan.attendance.DrillDays;
import org.drillwright.plan.attendance.Presence;
import org.drillwright.plan.roster.Knowledge;
import org.drillwright.plan.roster.Person;
import org.drillwright.plan.roster.Roster;
import org.drillwright.print.command.console.Exit;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.folder.SchoolOption;
import org.drillwright.print.command.planning.ClassRun;
import org.drillwright.print.command.planning.People;
import org.drillwright.print.command.planning.TaughtDrills;
import org.drillwright.register.History;
import org.drillwright.report.plan.AttendanceText;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Shows who came. */
@Command(name = "attendance", sortOptions = false)
public final class AttendanceCommand extends PeopleCommand {

    @Parameters(paramLabel = "NAME", arity = "0..1")
    String named = "";

    @Option(names = "--format", paramLabel = "FORMAT", defaultValue = "text")
    TableFormat format = TableFormat.TEXT;

    @Option(names = "--date", paramLabel = "DAY")
    Optional<LocalDate> date = Optional.empty();

    public AttendanceCommand(Invocation run, SchoolOption school) {
        super(run, school);
    }

    @Override
    public Integer call() {
        return withRoster(this::told);
    }

    private int told(ClassRun opened, Roster roster) {
        LocalDate today = date.orElseGet(run::today);
        History history = opened.classes().history().before(today.plusDays(1));
        List<String> people = roster.people().stream().map(Person::name).toList();
        List<String> drills =
                TaughtDrills.of(opened.folder()).stream().map(Drill::id).toList();
        Attendance attendance = Attendance.of(history, people);
        DrillDays worked = DrillDays.of(history);
        Knowledge knowledge = Knowledge.of(roster, history);
        List<String> wanted = named.isEmpty()
                ? people
                : List.of(new People(roster).person(named).name());
        List<Presence> all = wanted.stream()
                .map(person -> Presence.of(person, people, drills, attendance, worked, knowledge, today))
                .toList();
        if (format == TableFormat.CSV) {
            run.data().print(AttendanceText.csv(all, attendance));
        } else {
            run.out().print(AttendanceText.of(all, attendance, named.isEmpty(), run.language()));
        }
        return Exit.DONE;
    }
}
