package org.drillwright.print.command.classes;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.drillwright.model.School;
import org.drillwright.plan.roster.Naming;
import org.drillwright.plan.roster.Roster;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.print.command.console.Exit;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.console.TextFormat;
import org.drillwright.print.command.folder.CommandInSchool;
import org.drillwright.print.command.folder.SchoolOption;
import org.drillwright.print.command.folder.SheetOption;
import org.drillwright.print.command.planning.ClassRun;
import org.drillwright.print.command.planning.SheetFile;
import org.drillwright.print.command.planning.TermRun;
import org.drillwright.print.command.write.Kind;
import org.drillwright.print.command.write.NamedFile;
import org.drillwright.print.sheet.term.TermSheet;
import org.drillwright.report.calendar.TermCalendar;
import org.drillwright.report.plan.TermJson;
import org.drillwright.report.plan.TermText;
import org.drillwright.school.SchoolFolder;
import org.drillwright.wording.Message;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Plans a term. */
@Command(name = "term", sortOptions = false)
public final class TermCommand extends CommandInSchool {

    private static final String ENDING = ".ics";

    @Parameters(paramLabel = "TERM", arity = "1")
    String named = "";

    @Option(names = "--why")
    boolean why;

    @Option(names = "--format", paramLabel = "FORMAT", defaultValue = "text")
    TextFormat format = TextFormat.TEXT;

    @Option(names = "--out", paramLabel = "FILE")
    Optional<String> out = Optional.empty();

    @Mixin
    InitialsOption initials = new InitialsOption();

    @Mixin
    SheetOption sheet = new SheetOption();

    @Option(names = "--publish")
    boolean publish;

    @Option(names = "--calendar", paramLabel = "FILE")
    Optional<String> calendar = Optional.empty();

    @Option(names = "--date", paramLabel = "DAY")
    Optional<LocalDate> date = Optional.empty();

    public TermCommand(Invocation run, SchoolOption school) {
        super(run, school);
    }

    @Override
    public Integer call() {
        Optional<SheetFile> file = out.filter(name -> format == TextFormat.TEXT).map(name -> new SheetFile(run, name));
        TextOrData answer = new TextOrData(run, format == TextFormat.JSON, out, Kind.DATA);
        Optional<NamedFile> events = calendar.map(this::events);
        ClassRun opened = ClassRun.of(run, filled(List.of(named)));
        LocalDate today = date.orElseGet(run::today);
        return TermRun.of(opened, run.here(), named, today)
                .map(found -> told(found, file, events, answer))
                .orElse(Exit.MATERIAL);
    }

    private NamedFile events(String name) {
        if (!name.toLowerCase(Locale.ROOT).endsWith(ENDING)) {
            throw new CannotRun(Message.of(TermCommand.class, "ending", name, ENDING));
        }
        return new NamedFile(run, name, Kind.CALENDAR);
    }

    private int told(TermRun found, Optional<SheetFile> file, Optional<NamedFile> events, TextOrData answer) {
        TermRun term = publish ? found.publish(run.clock().instant().truncatedTo(ChronoUnit.SECONDS)) : found;
        String mark = term.printed().map(one -> one.mark().shown()).orElse("");
        file.ifPresent(sheetFile -> print(term, mark, sheetFile));
        events.ifPresent(one -> write(term, one));
        if (format == TextFormat.TEXT && (file.isPresent() || events.isPresent())) {
            run.say(term.standing());
        } else {
            answer.tell(
                    () -> TermText.of(term.plan(), term.standing(), why, run.language()),
                    () -> TermJson.of(term.plan(), mark, term.line().size(), run.language()));
        }
        return term.plan().groups().stream().allMatch(group -> group.missing() == 0) ? Exit.DONE : Exit.MATERIAL;
    }

    private void print(TermRun term, String mark, SheetFile file) {
        SchoolFolder folder = term.opened().folder();
        School settings = folder.school();
        Naming names = initials.of(folder, term.opened().classes().roster().orElse(Roster.EMPTY));
        file.write(
                folder,
                TermText.title(term.plan()),
                faces -> TermSheet.pages(
                        term.plan(),
                        term::title,
                        names,
                        sheet.of(settings),
                        settings.name(),
                        mark,
                        settings.language(),
                        faces));
    }

    /** Only what was published: a calendar is told of each change once, and of nothing that was only looked at. */
    private void write(TermRun term, NamedFile file) {
        if (term.line().isEmpty()) {
            throw new CannotRun(
                    Message.of(TermCommand.class, "unpublished", term.plan().named()));
        }
        String text =
                TermCalendar.of(term.line(), term.opened().folder().school().name(), term::title, run.language());
        file.write(text);
        String mark = term.line().get(term.line().size() - 1).mark().shown();
        run.say(Message.of(TermCommand.class, "calendar", file.shown(), mark));
    }
}
