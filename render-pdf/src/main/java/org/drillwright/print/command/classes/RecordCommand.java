package org.drillwright.print.command.classes;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.UnaryOperator;
import org.drillwright.model.Drill;
import org.drillwright.plan.pair.PairingPlan;
import org.drillwright.plan.pair.PlanEntries;
import org.drillwright.plan.pair.Round;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.print.command.console.Exit;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.folder.SchoolOption;
import org.drillwright.print.command.planning.ClassRun;
import org.drillwright.print.command.planning.People;
import org.drillwright.print.command.planning.Tonight;
import org.drillwright.print.command.write.RecordFile;
import org.drillwright.record.Entry;
import org.drillwright.record.Event;
import org.drillwright.record.RecordWriter;
import org.drillwright.school.ClassFiles;
import org.drillwright.source.Nearest;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes into the record what was done. */
@Command(
        name = "record",
        header = "Writes down who was there, who worked with whom, and who was signed off.",
        description =
                "Adds lines to record.csv beside school.yaml; what stands there is never changed, and what it tells"
                        + " already is not told twice. Recorded is the class as it was planned: give the same changes as to"
                        + " pairs, and what else was different with the options below.%n",
        sortOptions = false,
        exitCodeListHeading = Exit.HEADING,
        exitCodeList = {Exit.DONE_TEXT, "1:the class has errors; nothing was recorded", Exit.UNABLE_TEXT})
public final class RecordCommand implements Callable<Integer> {

    private final Invocation run;
    private final SchoolOption school;

    @Parameters(paramLabel = "CLASS", arity = "1", description = ClassWords.CLASS)
    String named = "";

    @Mixin
    ChangeOptions changes = new ChangeOptions();

    @Option(
            names = "--rounds",
            paramLabel = "N",
            description = "Only so many rounds were worked. Normally all; 0: only who was there.")
    Optional<Integer> rounds = Optional.empty();

    @Option(
            names = "--only",
            paramLabel = "DRILL",
            description =
                    "Of the drills that were planned only this one was worked. May be given several times; the page"
                            + " of handout --html writes such a line of what was ticked there.")
    List<String> only = new ArrayList<>();

    @Option(
            names = "--signed-off",
            arity = "2",
            paramLabel = "NAME DRILL",
            hideParamSyntax = true,
            description = "NAME DRILL: this person now knows this drill. May be given several times.")
    List<String> signedOff = new ArrayList<>();

    @Option(names = "--dry-run", description = "Shows the lines, and writes nothing.")
    boolean dryRun;

    public RecordCommand(Invocation run, SchoolOption school) {
        this.run = run;
        this.school = school;
    }

    @Override
    public Integer call() {
        ClassRun opened = ClassRun.open(run, school.folder(), List.of(named));
        return opened.tonight(named).map(this::recorded).orElse(Exit.MATERIAL);
    }

    private int recorded(Tonight tonight) {
        if (tonight.classes().isRecordBroken()) {
            run.err().println("Nothing was recorded: mend " + ClassFiles.RECORD + " first, or give it another name.");
            return Exit.MATERIAL;
        }
        mustBePlanned(tonight);
        RecordFile file = RecordFile.of(tonight.classes().recordFile());
        List<Entry> entries = entries(tonight);
        UnaryOperator<String> fresh =
                text -> RecordWriter.appended(text, tonight.classes().history(text), entries);
        if (dryRun) {
            run.out().print(fresh.apply(file.text()));
            return Exit.DONE;
        }
        String lines = file.append(fresh);
        if (lines.isEmpty()) {
            run.out().println("The record tells all of this already.");
            return Exit.DONE;
        }
        long added = lines.lines().filter(line -> !line.isBlank()).count();
        run.out().println(ClassFiles.RECORD + ": " + added + (added == 1 ? " line" : " lines") + " added.");
        return Exit.DONE;
    }

    private List<Entry> entries(Tonight tonight) {
        PairingPlan plan = tonight.pairing(changes.changes()).plan();
        List<Entry> entries = new ArrayList<>();
        tonight.plan()
                .here()
                .forEach(person ->
                        entries.add(Entry.attended(tonight.plan().brief().date(), person.name())));
        PlanEntries.of(worked(plan), tonight.plan().brief().date()).stream()
                .filter(entry -> !entries.contains(entry))
                .forEach(entries::add);
        People people = new People(tonight.roster());
        for (int at = 0; at + 1 < signedOff.size(); at += 2) {
            entries.add(Entry.signedOff(
                    tonight.plan().brief().date(),
                    people.person(signedOff.get(at)).name(),
                    drill(signedOff.get(at + 1), tonight)));
        }
        return entries.stream()
                .sorted(Comparator.comparing(entry -> entry.event() == Event.ATTENDED ? 0 : 1))
                .toList();
    }

    private PairingPlan worked(PairingPlan plan) {
        int worked = rounds.orElse(plan.rounds().size());
        if (worked < 0 || worked > plan.rounds().size()) {
            throw new CannotRun(
                    "--rounds wants a number from 0 to " + plan.rounds().size() + ".");
        }
        List<Round> done =
                plan.rounds().subList(0, worked).stream().filter(this::isDone).toList();
        return new PairingPlan(
                done,
                Math.min(done.size(), plan.firstPlanned()),
                plan.method(),
                plan.verdict(),
                plan.walk(),
                plan.shortages(),
                plan.facts());
    }

    private boolean isDone(Round round) {
        return only.isEmpty() || only.contains(round.drill());
    }

    private void mustBePlanned(Tonight tonight) {
        List<String> planned = tonight.plan().inOrder().stream().map(Drill::id).toList();
        for (String typed : only) {
            if (!planned.contains(drill(typed, tonight))) {
                throw new CannotRun("'" + typed + "' was not planned for " + named + ": put it among the drills of "
                        + named + ".yaml, so that its partners are known.");
            }
        }
    }

    private static String drill(String typed, Tonight tonight) {
        var known = tonight.classes().drills().keySet();
        if (known.contains(typed)) {
            return typed;
        }
        String said = "There is no drill '" + typed + "'";
        throw new CannotRun(Nearest.to(typed, known)
                .map(near -> said + "; did you mean '" + near + "'?")
                .orElse(said + "."));
    }
}
