package org.drillwright.print.command.drills;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.drillwright.check.Subject;
import org.drillwright.explain.SetWork;
import org.drillwright.explain.SetWorkJson;
import org.drillwright.explain.SetWorkText;
import org.drillwright.print.command.console.Exit;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.folder.CommandInSchool;
import org.drillwright.print.command.folder.SchoolOption;
import org.drillwright.print.command.printing.CountedNoun;
import org.drillwright.print.command.printing.chosen.ChosenDrills;
import org.drillwright.print.command.printing.chosen.DrillChooser;
import org.drillwright.report.DisplayWidth;
import org.drillwright.school.SchoolFolder;
import org.drillwright.wording.Message;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Shows what a set works. */
@Command(name = "coverage", sortOptions = false)
public final class CoverageCommand extends CommandInSchool {

    @Parameters(paramLabel = "SET", arity = "0..1")
    Optional<String> set = Optional.empty();

    @Mixin
    FormatOption format = new FormatOption();

    public CoverageCommand(Invocation run, SchoolOption school) {
        super(run, school);
    }

    @Override
    public Integer call() {
        return ifSound(
                filled(), Message.of(CoverageCommand.class, "coverage-command.nothing.was.analysed"), this::tell);
    }

    private int tell(SchoolFolder folder) {
        DrillChooser picking = new DrillChooser(folder);
        ChosenDrills picks = set.map(name -> picking.sets(List.of(name))).orElseGet(picking::whole);
        List<Subject> drills = picks.drills().stream()
                .flatMap(pick -> pick.entry().subject().stream())
                .toList();
        SetWork work = SetWork.of(drills, folder.school());
        if (format.isForPrograms()) {
            List<String> ids = drills.stream().map(drill -> drill.drill().id()).toList();
            run.data().print(SetWorkJson.of(work, set.orElse(""), ids, run.language()));
        } else {
            Message count = CountedNoun.of(drills.size(), "drill");
            run.out()
                    .println(run.said(set.map(name ->
                                            Message.of(CoverageCommand.class, "coverage-command.the.set", name, count))
                                    .orElse(Message.of(
                                            CoverageCommand.class, "coverage-command.the.whole.school", count)))
                            + "\n");
            run.out().print(SetWorkText.of(work, drills.size(), run.language()));
        }
        return unread(picks);
    }

    /** What is left out is said, for silence would be taken for a whole table. */
    private int unread(ChosenDrills picks) {
        List<String> unread = picks.drills().stream()
                .filter(pick -> !pick.isReadable())
                .map(pick -> pick.id())
                .toList();
        if (unread.isEmpty() && picks.absent().isEmpty()) {
            return Exit.DONE;
        }
        run.sayWhyNot(Message.of(
                CoverageCommand.class,
                "coverage-command.left.out.because.they",
                DisplayWidth.shown(String.join(
                        ", ",
                        Stream.concat(unread.stream(), picks.absent().stream()).toList()))));
        return Exit.MATERIAL;
    }
}
