package org.drillwright.print.command.drills;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.check.jury.OppositeHands;
import org.drillwright.model.Hands;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.print.command.console.Exit;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.console.VersionText;
import org.drillwright.print.command.folder.BesideDrills;
import org.drillwright.print.command.folder.CommandInSchool;
import org.drillwright.print.command.folder.SchoolOption;
import org.drillwright.print.command.folder.Schools;
import org.drillwright.print.command.folder.Selection;
import org.drillwright.print.command.planning.PlannedClasses;
import org.drillwright.print.command.printing.SchoolFaces;
import org.drillwright.print.command.printing.chosen.Unprintable;
import org.drillwright.report.JsonReport;
import org.drillwright.report.Judged;
import org.drillwright.report.LineReport;
import org.drillwright.report.RunSummary;
import org.drillwright.report.SarifReport;
import org.drillwright.school.JudgedCounts;
import org.drillwright.school.RuleHelps;
import org.drillwright.school.SchoolFolder;
import org.drillwright.source.Finding;
import org.drillwright.wording.Message;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Reads and judges drills. */
@Command(name = "check", sortOptions = false)
public final class CheckCommand extends CommandInSchool {

    @Parameters(paramLabel = "PATH", arity = "0..*")
    List<String> paths = new ArrayList<>();

    @Option(names = "--format", paramLabel = "FORMAT", defaultValue = "text")
    ReportFormat format = ReportFormat.TEXT;

    @Option(names = "--strict")
    boolean strict;

    @Option(names = "--suggest")
    boolean suggest;

    @Option(names = "--hands", paramLabel = "HANDS")
    Hands hands = Hands.SAME;

    @Option(names = "--fix")
    boolean fix;

    @Option(names = "--write")
    boolean write;

    @Option(names = "--rules")
    boolean rules;

    public CheckCommand(Invocation run, SchoolOption school) {
        super(run, school);
    }

    @Override
    public Integer call() {
        if (rules) {
            run.out().print(RulesPage.text(run.paint(), run.language()));
            return Exit.DONE;
        }
        if (write && !fix) {
            throw new CannotRun(Message.of(CheckCommand.class, "check-command.write.needs.fix"));
        }
        if (fix && format != ReportFormat.TEXT) {
            throw new CannotRun(Message.of(CheckCommand.class, "check-command.fix.for.people"));
        }
        SchoolFolder folder = filled(paths);
        BesideDrills beside = BesideDrills.among(paths, folder.root(), run);
        Selection selection = selection(folder, beside);
        if (fix && new FixRun(run).make(selection, write)) {
            folder = Schools.openFilled(run, folder.root());
            selection = selection(folder, beside);
        }
        List<Finding> findings = findings(folder, selection, beside);
        RunSummary tally = RunSummary.of(selection.entries().size(), findings);
        report(folder, findings, tally, selection);
        return tally.errors() > 0 || (strict && tally.warnings() > 0) ? Exit.MATERIAL : Exit.DONE;
    }

    private Selection selection(SchoolFolder folder, BesideDrills beside) {
        boolean noDrill = beside.others().isEmpty() && !beside.files().isEmpty();
        return noDrill ? new Selection(List.of(), false) : Selection.of(folder, run, beside.others());
    }

    /** Settings that cannot be read concern every drill; what else is wrong with the folder concerns the whole. */
    private List<Finding> findings(SchoolFolder folder, Selection selection, BesideDrills beside) {
        List<Finding> findings = new ArrayList<>();
        if (selection.whole() || folder.isUnjudged()) {
            findings.addAll(folder.folderFindings());
        }
        if (selection.whole() && !folder.isUnjudged()) {
            findings.addAll(PlannedClasses.findings(folder));
        } else if (!beside.files().isEmpty() && !folder.isUnjudged()) {
            findings.addAll(PlannedClasses.findings(folder, beside::holds));
        }
        for (SchoolFolder.Entry entry : selection.entries()) {
            findings.addAll(entry.findings());
            if (hands == Hands.OPPOSITE) {
                entry.subject().map(OppositeHands::notes).ifPresent(findings::addAll);
            }
        }
        findings.addAll(Unprintable.findings(selection.entries(), folder.school(), () -> SchoolFaces.of(folder)));
        return findings;
    }

    private void report(SchoolFolder folder, List<Finding> findings, RunSummary tally, Selection selection) {
        Judged judged = JudgedCounts.of(selection.entries());
        switch (format) {
            case TEXT -> {
                run.show(findings);
                if (suggest) {
                    run.out().print(Proposals.text(selection, run.language()));
                }
                run.out().println(run.said(tally.sentence()) + "." + verdict(tally));
                run.out().println(run.said(judged.sentence()) + ".");
            }
            case LINE ->
                run.data().print(LineReport.of(FromHere.named(findings, folder.root(), run.here()), run.language()));
            case SARIF -> run.data().print(sarif(folder, findings, judged));
            case JSON -> run.data().print(JsonReport.of(forPrograms(findings, folder), tally, judged, run.language()));
        }
    }

    /** Files are named from where the caller stands if the school lies there, or else from the school's folder. */
    private List<Finding> forPrograms(List<Finding> findings, SchoolFolder folder) {
        return FromHere.isBelow(folder.root(), run.here())
                ? FromHere.named(findings, folder.root(), run.here())
                : findings;
    }

    private String sarif(SchoolFolder folder, List<Finding> findings, Judged judged) {
        return SarifReport.of(
                forPrograms(findings, folder),
                RuleHelps.all(),
                judged,
                VersionText.number(),
                run.said(Message.of(
                        CheckCommand.class,
                        FromHere.isBelow(folder.root(), run.here())
                                ? "check-command.folder.here"
                                : "check-command.folder.school")),
                run.language());
    }

    private String verdict(RunSummary tally) {
        boolean onlyStrict = strict && tally.errors() == 0 && tally.warnings() > 0;
        return onlyStrict ? " " + run.said(Message.of(CheckCommand.class, "check-command.strict")) : "";
    }
}
