package org.drillwright.print.command.drills;

import java.util.List;
import org.drillwright.check.Subject;
import org.drillwright.explain.Explanation;
import org.drillwright.explain.ExplanationJson;
import org.drillwright.print.command.console.Exit;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.folder.CommandInSchool;
import org.drillwright.print.command.folder.SchoolOption;
import org.drillwright.print.command.folder.Selection;
import org.drillwright.school.SchoolFolder;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Tells a drill count by count as it was played. */
@Command(name = "explain", sortOptions = false)
public final class ExplainCommand extends CommandInSchool {

    @Parameters(paramLabel = "DRILL", arity = "1")
    String drill = "";

    @Mixin
    FormatOption format = new FormatOption();

    public ExplainCommand(Invocation run, SchoolOption school) {
        super(run, school);
    }

    @Override
    public Integer call() {
        SchoolFolder folder = filled(List.of(drill));
        boolean whole = true;
        for (SchoolFolder.Entry entry :
                Selection.of(folder, run, List.of(drill)).entries()) {
            whole &= entry.subject().isPresent();
            entry.subject().ifPresent(this::tell);
            if (entry.subject().isEmpty()) {
                run.show(entry.findings());
            }
        }
        return whole ? Exit.DONE : Exit.MATERIAL;
    }

    private void tell(Subject subject) {
        if (format.isForPrograms()) {
            run.data().print(ExplanationJson.of(subject, run.language()));
        } else {
            run.out().print(Explanation.text(subject, run.language()));
        }
    }
}
