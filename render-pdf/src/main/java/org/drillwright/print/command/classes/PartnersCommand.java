package org.drillwright.print.command.classes;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.drillwright.model.Level;
import org.drillwright.plan.partner.SharedDrills;
import org.drillwright.plan.partner.TrainingPartners;
import org.drillwright.plan.roster.Knowledge;
import org.drillwright.plan.roster.Person;
import org.drillwright.plan.roster.Roster;
import org.drillwright.print.command.console.Exit;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.folder.SchoolOption;
import org.drillwright.print.command.planning.ClassRun;
import org.drillwright.print.command.planning.People;
import org.drillwright.print.command.planning.TaughtDrills;
import org.drillwright.register.Together;
import org.drillwright.report.plan.PartnersText;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Finds training partners. */
@Command(name = "partners", sortOptions = false)
public final class PartnersCommand extends PeopleCommand {

    private static final int NEAREST = 5;

    @Parameters(paramLabel = "NAME", arity = "0..1")
    String named = "";

    public PartnersCommand(Invocation run, SchoolOption school) {
        super(run, school);
    }

    @Override
    public Integer call() {
        return withRoster(this::told);
    }

    private int told(ClassRun opened, Roster roster) {
        TrainingPartners partners = new TrainingPartners(
                roster,
                opened.folder().school().levels().stream().map(Level::name).toList(),
                new SharedDrills(
                        TaughtDrills.of(opened.folder()),
                        Knowledge.of(roster, opened.classes().history())));
        List<Person> people = named.isEmpty() ? roster.people() : List.of(new People(roster).person(named));
        for (Person person : people) {
            Map<String, List<String>> lately = new HashMap<>();
            LocalDate today = run.today();
            Together together = opened.classes().together();
            roster.people()
                    .forEach(other -> lately.put(
                            other.name(),
                            Stream.of(
                                            together.kept(person.name(), other.name(), today),
                                            together.minutes(person.name(), other.name(), today))
                                    .flatMap(Optional::stream)
                                    .map(run::said)
                                    .toList()));
            run.out()
                    .print(PartnersText.of(
                            person.name(),
                            partners.of(person),
                            named.isEmpty() ? NEAREST : Integer.MAX_VALUE,
                            lately,
                            run.language()));
        }
        return Exit.DONE;
    }
}
