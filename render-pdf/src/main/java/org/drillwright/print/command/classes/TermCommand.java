package org.drillwright.print.command.classes;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.drillwright.model.School;
import org.drillwright.model.SheetSize;
import org.drillwright.plan.roster.Naming;
import org.drillwright.plan.roster.Roster;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.print.command.console.Exit;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.console.TextFormat;
import org.drillwright.print.command.folder.Locations;
import org.drillwright.print.command.folder.SchoolOption;
import org.drillwright.print.command.planning.ClassRun;
import org.drillwright.print.command.planning.DataFile;
import org.drillwright.print.command.planning.SheetFile;
import org.drillwright.print.command.planning.TermRun;
import org.drillwright.print.command.write.Kind;
import org.drillwright.print.command.write.WholeFile;
import org.drillwright.print.sheet.term.TermSheet;
import org.drillwright.report.calendar.TermCalendar;
import org.drillwright.report.plan.TermJson;
import org.drillwright.report.plan.TermText;
import org.drillwright.school.SchoolFolder;
import org.drillwright.wording.Message;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Plans a term. */
@Command(name = "term", sortOptions = false)
public final class TermCommand implements Callable<Integer> {

    private static final String ENDING = ".ics";

    private final Invocation run;
    private final SchoolOption school;

    @Parameters(paramLabel = "TERM", arity = "1")
    String named = "";

    @Option(names = "--why")
    boolean why;

    @Option(names = "--format", paramLabel = "FORMAT", defaultValue = "text")
    TextFormat format = TextFormat.TEXT;

    @Option(names = "--out", paramLabel = "FILE")
    Optional<String> out = Optional.empty();

    @Option(names = "--initials")
    boolean initials;

    @Option(names = "--sheet", paramLabel = "SIZE")
    Optional<SheetSize> sheet = Optional.empty();

    @Option(names = "--publish")
    boolean publish;

    @Option(names = "--calendar", paramLabel = "FILE")
    Optional<String> calendar = Optional.empty();

    @Option(names = "--date", paramLabel = "DAY")
    Optional<LocalDate> date = Optional.empty();

    private Optional<DataFile> data = Optional.empty();

    public TermCommand(Invocation run, SchoolOption school) {
        this.run = run;
        this.school = school;
    }

    @Override
    public Integer call() {
        Optional<SheetFile> file = out.filter(name -> format == TextFormat.TEXT).map(name -> new SheetFile(run, name));
        data = out.filter(name -> format == TextFormat.JSON).map(name -> new DataFile(run, name, Kind.DATA));
        Optional<WholeFile> events = calendar.map(this::events);
        ClassRun opened = ClassRun.open(run, school.folder(), List.of(named));
        LocalDate today = date.orElseGet(run::today);
        return TermRun.of(opened, run.here(), named, today)
                .map(found -> told(found, file, events))
                .orElse(Exit.MATERIAL);
    }

    private WholeFile events(String name) {
        if (!name.toLowerCase(Locale.ROOT).endsWith(ENDING)) {
            throw new CannotRun(Message.of(TermCommand.class, "ending", name, ENDING));
        }
        WholeFile file = new WholeFile(Locations.file(run.here(), name));
        file.mustBeFree(Kind.CALENDAR);
        return file;
    }

    private int told(TermRun found, Optional<SheetFile> file, Optional<WholeFile> events) {
        TermRun term = publish ? found.publish(run.clock().instant().truncatedTo(ChronoUnit.SECONDS)) : found;
        String mark = term.printed().map(one -> one.mark().shown()).orElse("");
        file.ifPresent(sheetFile -> print(term, mark, sheetFile));
        events.ifPresent(one -> write(term, one));
        if (format == TextFormat.JSON) {
            DataFile.tell(run, data, TermJson.of(term.plan(), mark, term.line().size(), run.language()));
        } else if (file.isEmpty() && events.isEmpty()) {
            run.out().print(TermText.of(term.plan(), term.standing(), why, run.language()));
        } else {
            run.say(term.standing());
        }
        return term.plan().groups().stream().allMatch(group -> group.missing() == 0) ? Exit.DONE : Exit.MATERIAL;
    }

    private void print(TermRun term, String mark, SheetFile file) {
        SchoolFolder folder = term.opened().folder();
        School settings = folder.school();
        List<String> people =
                term.opened().classes().roster().orElse(Roster.EMPTY).names();
        Naming names = initials || folder.habits().initials() ? Naming.initials(people) : Naming.full();
        file.write(
                folder,
                TermText.title(term.plan()),
                faces -> TermSheet.pages(
                        term.plan(),
                        term::title,
                        names,
                        sheet.orElse(settings.sheet()),
                        settings.name(),
                        mark,
                        settings.language(),
                        faces));
    }

    /** Only what was published: a calendar is told of each change once, and of nothing that was only looked at. */
    private void write(TermRun term, WholeFile file) {
        if (term.line().isEmpty()) {
            throw new CannotRun(
                    Message.of(TermCommand.class, "unpublished", term.plan().named()));
        }
        String text =
                TermCalendar.of(term.line(), term.opened().folder().school().name(), term::title, run.language());
        file.write(text.getBytes(StandardCharsets.UTF_8));
        String mark = term.line().get(term.line().size() - 1).mark().shown();
        run.say(Message.of(TermCommand.class, "calendar", calendar.orElse(""), mark));
    }
}
