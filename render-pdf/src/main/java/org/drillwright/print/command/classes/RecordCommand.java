package org.drillwright.print.command.classes;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.drillwright.plan.kept.KeptPlan;
import org.drillwright.plan.kept.Worked;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.print.command.console.Exit;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.folder.SchoolOption;
import org.drillwright.print.command.planning.People;
import org.drillwright.print.command.planning.RecordAdding;
import org.drillwright.print.command.planning.Recorded;
import org.drillwright.print.command.planning.SincePrinted;
import org.drillwright.print.command.planning.Tonight;
import org.drillwright.register.Added;
import org.drillwright.register.ClassTold;
import org.drillwright.register.Entry;
import org.drillwright.register.RecordWriter;
import org.drillwright.school.ClassFiles;
import org.drillwright.source.Nearest;
import org.drillwright.wording.Message;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes into the record what was done. */
@Command(name = "record", sortOptions = false)
public final class RecordCommand extends PeopleCommand {

    @Parameters(paramLabel = "CLASS", arity = "1")
    String named = "";

    @Option(names = "--plan", paramLabel = "MARK")
    Optional<String> mark = Optional.empty();

    @Option(names = "--as", paramLabel = "FILE")
    Optional<String> copy = Optional.empty();

    @Mixin
    WorkedOptions options = new WorkedOptions();

    @Option(names = "--date", paramLabel = "DATE")
    Optional<LocalDate> date = Optional.empty();

    @Option(names = "--signed-off", arity = "2", paramLabel = "NAME DRILL", hideParamSyntax = true)
    List<String> signedOff = new ArrayList<>();

    @Option(names = "--not-signed-off", arity = "2", paramLabel = "NAME DRILL", hideParamSyntax = true)
    List<String> notSignedOff = new ArrayList<>();

    @Option(names = "--take-back")
    boolean takeBack;

    @Option(names = "--dry-run")
    boolean dryRun;

    public RecordCommand(Invocation run, SchoolOption school) {
        super(run, school);
    }

    @Override
    public Integer call() {
        if (mark.isPresent() && copy.isPresent()) {
            throw new CannotRun(Message.of(RecordCommand.class, "plan.or.as"));
        }
        return inClass(named, tonight -> recorded(tonight).orElse(Exit.MATERIAL));
    }

    private Optional<Integer> recorded(Tonight tonight) {
        LocalDate day = date.orElse(tonight.plan().brief().date());
        mustBePast(day);
        Optional<Recorded> recorded = copy.isPresent()
                ? Recorded.copy(run, tonight, copy.get())
                : Optional.of(takeBack ? nothing(tonight) : Recorded.of(tonight, mark));
        return recorded.map(one -> written(tonight, one, told(tonight, one, day)));
    }

    private void mustBePast(LocalDate day) {
        LocalDate today = run.today();
        if (day.isAfter(today)) {
            throw new CannotRun(
                    Message.of(RecordCommand.class, "to.come", Message.day(day), Message.day(today), today));
        }
    }

    private static Recorded nothing(Tonight tonight) {
        KeptPlan plan =
                KeptPlan.ofNothing(tonight.named(), tonight.plan().brief().date());
        return new Recorded(plan, Recorded.NONE, false);
    }

    private ClassTold told(Tonight tonight, Recorded recorded, LocalDate day) {
        options.only.forEach(drill -> mustBeIn(recorded.plan(), drill(drill, tonight)));
        People people = new People(tonight.roster());
        LocalDate planned = recorded.plan().date();
        Worked worked = (takeBack ? Worked.of(recorded.plan()) : options.of(recorded.plan(), people))
                .renamed(name -> tonight.classes().now(name, planned));
        SincePrinted.mustBeOnTheRoster(tonight, recorded.mark(), names(worked));
        return new ClassTold(
                day,
                tonight.named(),
                recorded.mark(),
                worked.entries(day),
                signs(signedOff, day, people, tonight),
                signs(notSignedOff, day, people, tonight),
                signsOnly());
    }

    /** Somebody who only signs off doesn't say anew what was worked. */
    private boolean signsOnly() {
        boolean signs = !signedOff.isEmpty() || !notSignedOff.isEmpty();
        return signs && !options.isAnything() && mark.isEmpty() && copy.isEmpty() && !takeBack;
    }

    private static Set<String> names(Worked worked) {
        Set<String> names = new LinkedHashSet<>(worked.here());
        worked.rounds().forEach(round -> round.groups().forEach(group -> names.addAll(group.everyone())));
        return names;
    }

    private static List<Entry> signs(List<String> given, LocalDate day, People people, Tonight tonight) {
        List<Entry> signs = new ArrayList<>();
        for (int at = 0; at + 1 < given.size(); at += 2) {
            signs.add(Entry.signedOff(day, people.person(given.get(at)).name(), drill(given.get(at + 1), tonight)));
        }
        return signs;
    }

    private int written(Tonight tonight, Recorded recorded, ClassTold told) {
        RecordAdding record = new RecordAdding(tonight.classes());
        if (dryRun) {
            run.out()
                    .print(record.shown(read -> RecordWriter.appended(read, told))
                            .text());
            return Exit.DONE;
        }
        Added lines = record.add(read -> RecordWriter.appended(read, told));
        if (lines.isNothing()) {
            run.say(Message.of(RecordCommand.class, "nothing.new"));
            return Exit.DONE;
        }
        List<Message> said = new ArrayList<>();
        if (lines.told() > 0) {
            said.add(Message.counted(RecordCommand.class, "lines.added", lines.told()));
        }
        if (lines.takenBack() > 0) {
            said.add(Message.counted(RecordCommand.class, "lines.back", lines.takenBack()));
        }
        if (!(lines.again() && signsOnly())) {
            said.addAll(of(recorded));
        }
        boolean anew = lines.again() && !signsOnly() && !takeBack;
        run.say(Message.of(RecordCommand.class, "recorded", ClassFiles.RECORD, Message.listed(said))
                .then(anew ? Message.of(RecordCommand.class, "recorded.anew") : Message.none()));
        tonight.kept().all().stream()
                .filter(kept -> kept.mark().shown().equals(recorded.mark()))
                .flatMap(kept -> new SincePrinted(tonight, kept).changes().stream())
                .forEach(run::say);
        return Exit.DONE;
    }

    /** What was taken for what happened. */
    private List<Message> of(Recorded recorded) {
        if (takeBack) {
            return List.of();
        }
        if (recorded.changed()) {
            return List.of(Message.of(RecordCommand.class, "as.copy", recorded.mark()));
        }
        Message plan = recorded.mark().equals(Recorded.NONE)
                ? Message.of(RecordCommand.class, "as.planned")
                : Message.of(RecordCommand.class, "as.printed", recorded.mark());
        return options.isAnything() ? List.of(plan, Message.of(RecordCommand.class, "as.you.said")) : List.of(plan);
    }

    private void mustBeIn(KeptPlan plan, String drill) {
        boolean planned = plan.rounds().stream().anyMatch(round -> round.drill().equals(drill));
        if (!planned) {
            throw new CannotRun(Message.of(RecordCommand.class, "no.partner.round", drill, named));
        }
    }

    private static String drill(String typed, Tonight tonight) {
        var known = tonight.classes().drills().keySet();
        if (known.contains(typed)) {
            return typed;
        }
        throw new CannotRun(Nearest.to(typed, known)
                .map(near -> Message.of(RecordCommand.class, "no.drill.near", typed, near))
                .orElseGet(() -> Message.of(RecordCommand.class, "no.drill", typed)));
    }
}
