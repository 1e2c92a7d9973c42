package org.drillwright.print.command.classes;

import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillwright.model.Drill;
import org.drillwright.plan.partner.TwoSession;
import org.drillwright.plan.roster.Knowledge;
import org.drillwright.plan.roster.Person;
import org.drillwright.plan.roster.Roster;
import org.drillwright.plan.roster.Timing;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.print.command.console.Exit;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.folder.SchoolOption;
import org.drillwright.print.command.folder.SheetOption;
import org.drillwright.print.command.planning.ClassRun;
import org.drillwright.print.command.planning.People;
import org.drillwright.print.command.planning.RecordAdding;
import org.drillwright.print.command.planning.SheetFile;
import org.drillwright.print.command.planning.TaughtDrills;
import org.drillwright.print.sheet.HandWord;
import org.drillwright.print.sheet.HandWords;
import org.drillwright.print.sheet.SessionSheet;
import org.drillwright.register.Added;
import org.drillwright.register.Entry;
import org.drillwright.register.Event;
import org.drillwright.register.RecordWriter;
import org.drillwright.register.Together;
import org.drillwright.report.plan.SessionText;
import org.drillwright.school.ClassFiles;
import org.drillwright.wording.Message;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Makes a sheet for two who train outside class. */
@Command(name = "session", sortOptions = false)
public final class SessionCommand extends PeopleCommand {

    private static final List<Event> TOLD =
            List.of(Event.AGREED, Event.KEPT, Event.CAME_LATE, Event.DID_NOT_COME, Event.CALLED_OFF);

    @Parameters(paramLabel = "NAME", arity = "2")
    List<String> named = List.of();

    @Option(names = "--minutes", paramLabel = "N", defaultValue = "60")
    int minutes = 60;

    @Option(names = "--out", paramLabel = "FILE")
    Optional<String> out = Optional.empty();

    @Mixin
    SheetOption sheet = new SheetOption();

    @Mixin
    InitialsOption initials = new InitialsOption();

    @Option(names = "--tell", paramLabel = "WORD")
    Optional<String> tell = Optional.empty();

    @Option(names = "--worked")
    boolean worked;

    @Option(names = "--date", paramLabel = "DATE")
    Optional<LocalDate> date = Optional.empty();

    public SessionCommand(Invocation run, SchoolOption school) {
        super(run, school);
    }

    @Override
    public Integer call() {
        if (minutes < 1 || minutes > 1000) {
            throw new CannotRun(Message.of(SessionCommand.class, "minutes"));
        }
        Optional<SheetFile> file = out.map(name -> new SheetFile(run, name));
        return withRoster((opened, roster) -> told(opened, roster, file));
    }

    private int told(ClassRun opened, Roster roster, Optional<SheetFile> file) {
        People people = new People(roster);
        Person one = people.person(named.get(0));
        Person other = people.person(named.get(1));
        if (one.equals(other)) {
            throw new CannotRun(Message.of(SessionCommand.class, "two.people"));
        }
        if (roster.areApart(one.name(), other.name())) {
            run.sayWhyNot(Message.of(SessionCommand.class, "apart", one.name(), other.name()));
            return Exit.MATERIAL;
        }
        if (tell.isPresent()) {
            return tell(opened, List.of(new Entry(day(), one.name(), "", event(tell.get()), other.name())));
        }
        Together together = opened.classes().together();
        boolean turned = together.leadsFirst(one.name(), other.name()).equals(other.name());
        Timing timing = opened.folder().habits().timing();
        TwoSession session = TwoSession.of(
                turned ? other : one,
                turned ? one : other,
                Duration.ofMinutes(minutes),
                TaughtDrills.of(opened.folder()),
                Knowledge.of(roster, opened.classes().history()),
                timing);
        Map<String, Drill> drills = opened.classes().drills();
        if (file.isPresent()) {
            var settings = opened.folder().school();
            file.get()
                    .write(
                            opened.folder(),
                            HandWords.in(settings.language()).text(HandWord.FOR_TWO),
                            faces -> SessionSheet.pages(
                                    session,
                                    initials.of(opened.folder(), roster),
                                    settings,
                                    drills,
                                    sheet.of(settings),
                                    faces));
            run.say(session.fact());
        } else {
            run.out().print(SessionText.of(session, timing, drills, run.language()));
        }
        together.minutes(one.name(), other.name(), run.today())
                .ifPresent(words -> run.say(Message.of(SessionCommand.class, "had", words)));
        together.differing(one.name(), other.name(), run.today()).forEach(run::say);
        if (worked && !session.blocks().isEmpty()) {
            return tell(opened, turns(session));
        }
        return session.blocks().isEmpty() ? Exit.MATERIAL : Exit.DONE;
    }

    private LocalDate day() {
        return date.orElseGet(run::today);
    }

    private static Event event(String word) {
        return TOLD.stream()
                .filter(event -> event.word().equalsIgnoreCase(word.strip()))
                .findFirst()
                .orElseThrow(() -> new CannotRun(Message.of(
                        SessionCommand.class,
                        "tell",
                        Message.words(TOLD.stream().map(Event::word).toList()))));
    }

    private List<Entry> turns(TwoSession session) {
        return session.blocks().stream()
                .map(block -> new Entry(
                        day(),
                        block.leadsFirst(),
                        block.drill(),
                        Event.LED_FIRST,
                        block.leadsFirst().equals(session.one()) ? session.other() : session.one()))
                .toList();
    }

    private int tell(ClassRun opened, List<Entry> facts) {
        Added added = new RecordAdding(opened.classes()).add(read -> RecordWriter.told(read, facts));
        run.say(
                added.isNothing()
                        ? Message.of(SessionCommand.class, "nothing.new.session")
                        : Message.of(
                                SessionCommand.class,
                                "recorded",
                                ClassFiles.RECORD,
                                Message.counted(SessionCommand.class, "lines.added", added.told())));
        return Exit.DONE;
    }
}
