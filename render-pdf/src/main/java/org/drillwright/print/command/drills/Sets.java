package org.drillwright.print.command.drills;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.drillwright.autofix.Listing;
import org.drillwright.check.Subject;
import org.drillwright.check.folder.InNoSet;
import org.drillwright.model.Drill;
import org.drillwright.model.DrillSet;
import org.drillwright.model.Shelves;
import org.drillwright.print.command.ask.Questions;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.folder.Schools;
import org.drillwright.print.command.write.WholeFile;
import org.drillwright.read.ReadSchool;
import org.drillwright.school.SchoolFolder;
import org.drillwright.wording.Message;

/** Which sets a new drill is in, and how it comes into one that is a list. */
final class Sets {

    private final Invocation run;
    private final SchoolFolder folder;

    /** @param folder as it was before the drill was written */
    Sets(Invocation run, SchoolFolder folder) {
        this.run = run;
        this.folder = folder;
    }

    /** A set to which a drill can be added. */
    DrillSet listed(String name) {
        List<DrillSet> sets = folder.school().sets();
        DrillSet set = sets.stream()
                .filter(one -> one.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new CannotRun(Message.of(
                        Sets.class,
                        "sets.schoolyaml.has.no.set",
                        name,
                        (sets.isEmpty() ? "." : Message.of(Sets.class, "sets.it.has", named(sets))))));
        if (!set.isListed()) {
            throw new CannotRun(Message.of(Sets.class, "sets.the.set.is.not", name));
        }
        return set;
    }

    /** Adds a drill to the set that is wanted, or else tells which sets it is in and proposes one if it is in none. */
    void take(String id, Optional<DrillSet> wanted) {
        if (wanted.isPresent()) {
            add(id, wanted.get());
            return;
        }
        SchoolFolder now = Schools.again(run, folder);
        List<Drill> drills = now.entries().stream()
                .flatMap(entry -> entry.subject().stream())
                .map(Subject::drill)
                .toList();
        List<DrillSet> sets = now.school().sets();
        now.entry(id).flatMap(SchoolFolder.Entry::subject).map(Subject::drill).ifPresent(drill -> {
            List<DrillSet> holding =
                    sets.stream().filter(set -> set.holds(drill)).toList();
            if (holding.isEmpty()) {
                InNoSet.listOf(drill.level(), sets, new Shelves(drills)).ifPresent(set -> propose(id, set));
            } else {
                run.say(Message.counted(Sets.class, "sets.it.is.in.the", holding.size(), named(holding)));
            }
        });
    }

    private void propose(String id, DrillSet set) {
        run.say(Message.of(Sets.class, "sets.it.is.in.no"));
        if (run.terminal() && new Questions(run).yes(Message.of(Sets.class, "sets.add.it.to.the", set.name()))) {
            add(id, set);
        } else {
            run.say(InNoSet.wayOut(id, set));
        }
    }

    private void add(String id, DrillSet set) {
        ReadSchool settings = folder.settings().orElseThrow();
        String name = settings.file().name();
        new WholeFile(folder.root().resolve(name))
                .rewrite(settings.file().text(), Listing.text(settings, set, id).orElseThrow());
        run.say(Message.of(Sets.class, "sets.added.to.the.set", set.name(), name));
    }

    private static String named(List<DrillSet> sets) {
        return sets.stream().map(set -> "'" + set.name() + "'").collect(Collectors.joining(", "));
    }
}
