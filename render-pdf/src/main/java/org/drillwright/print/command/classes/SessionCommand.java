package org.drillwright.print.command.classes;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.drillwright.model.Drill;
import org.drillwright.model.SheetSize;
import org.drillwright.plan.partner.TwoSession;
import org.drillwright.plan.roster.Knowledge;
import org.drillwright.plan.roster.Naming;
import org.drillwright.plan.roster.Person;
import org.drillwright.plan.roster.Roster;
import org.drillwright.plan.roster.Timing;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.print.command.console.Exit;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.folder.SchoolOption;
import org.drillwright.print.command.planning.ClassRun;
import org.drillwright.print.command.planning.People;
import org.drillwright.print.command.planning.SheetFile;
import org.drillwright.print.command.planning.TeachingOrder;
import org.drillwright.print.sheet.SessionSheet;
import org.drillwright.tell.SessionText;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Makes a sheet for two who train outside class. */
@Command(
        name = "session",
        header = "Makes a sheet for two who train outside class.",
        description = "Only drills that both know, the latest in teaching order; who leads first goes by turns. The two"
                + " are equals. Nothing about it is stored.%n",
        sortOptions = false,
        exitCodeListHeading = Exit.HEADING,
        exitCodeList = {
            Exit.DONE_TEXT,
            "1:the two are kept apart, or no drill fits, or the roster has errors",
            Exit.UNABLE_TEXT
        })
public final class SessionCommand implements Callable<Integer> {

    private final Invocation run;
    private final SchoolOption school;

    @Parameters(paramLabel = "NAME", arity = "2", description = "The two.")
    List<String> named = List.of();

    @Option(
            names = "--minutes",
            paramLabel = "N",
            defaultValue = "60",
            description = "How long, with opening, warm-up and closing. Normally 60.")
    int minutes = 60;

    @Option(
            names = "--out",
            paramLabel = "FILE",
            description = "Writes the sheet into this PDF, with room to write what you agree on.")
    Optional<String> out = Optional.empty();

    @Option(names = "--sheet", paramLabel = "SIZE", description = ClassWords.SHEET)
    Optional<SheetSize> sheet = Optional.empty();

    @Option(names = "--initials", description = ClassWords.INITIALS)
    boolean initials;

    public SessionCommand(Invocation run, SchoolOption school) {
        this.run = run;
        this.school = school;
    }

    @Override
    public Integer call() {
        if (minutes < 1 || minutes > 1000) {
            throw new CannotRun("--minutes wants a number from 1 to 1000.");
        }
        Optional<SheetFile> file = out.map(name -> new SheetFile(run, name));
        ClassRun opened = ClassRun.open(run, school.folder(), List.of());
        return opened.roster().map(roster -> told(opened, roster, file)).orElse(Exit.MATERIAL);
    }

    private int told(ClassRun opened, Roster roster, Optional<SheetFile> file) {
        People people = new People(roster);
        Person one = people.person(named.get(0));
        Person other = people.person(named.get(1));
        if (one.equals(other)) {
            throw new CannotRun("A session needs two people.");
        }
        if (roster.areApart(one.name(), other.name())) {
            run.err().println(one.name() + " and " + other.name() + " are kept apart: the roster says so.");
            return Exit.MATERIAL;
        }
        Timing timing = opened.folder().habits().timing();
        TwoSession session = TwoSession.of(
                one,
                other,
                Duration.ofMinutes(minutes),
                TeachingOrder.of(opened.folder()),
                Knowledge.of(roster, opened.classes().history()),
                timing);
        Map<String, Drill> drills = opened.classes().drills();
        if (file.isPresent()) {
            boolean hidden = initials || opened.folder().habits().initials();
            var settings = opened.folder().school();
            file.get()
                    .write(
                            opened.folder(),
                            "Training for two",
                            faces -> SessionSheet.pages(
                                    session,
                                    hidden ? Naming.initials(roster.names()) : Naming.full(),
                                    settings,
                                    drills,
                                    sheet.orElse(settings.sheet()),
                                    faces));
            session.facts().forEach(run.out()::println);
        } else {
            run.out().print(SessionText.of(session, timing, drills));
        }
        return session.blocks().isEmpty() ? Exit.MATERIAL : Exit.DONE;
    }
}
