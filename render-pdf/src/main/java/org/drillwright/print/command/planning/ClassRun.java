package org.drillwright.print.command.planning;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillwright.plan.evening.ClassPlan;
import org.drillwright.plan.evening.Wished;
import org.drillwright.plan.roster.ClassBrief;
import org.drillwright.plan.roster.Roster;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.folder.Locations;
import org.drillwright.read.Reading;
import org.drillwright.school.ClassFiles;
import org.drillwright.school.ClassFolder;
import org.drillwright.school.DrillFiles;
import org.drillwright.school.ReadPlans;
import org.drillwright.school.SchoolFolder;
import org.drillwright.source.Finding;
import org.drillwright.source.Fingerprint;
import org.drillwright.source.Nearest;
import org.drillwright.source.Severity;
import org.drillwright.wording.Message;

/** Opens the school for planning. What has errors is told, and planned is nothing. */
public final class ClassRun {

    /** Figures of the record in a plan's origin. */
    private static final int FIGURES = 8;

    private final Invocation run;
    private final SchoolFolder folder;
    private final ClassFolder classes;

    private ClassRun(Invocation run, SchoolFolder folder) {
        this.run = run;
        this.folder = folder;
        this.classes = PlannedClasses.open(folder);
    }

    /** For a school that is open already. */
    public static ClassRun of(Invocation run, SchoolFolder folder) {
        return new ClassRun(run, folder);
    }

    public SchoolFolder folder() {
        return folder;
    }

    public ClassFolder classes() {
        return classes;
    }

    /**
     * The people; nothing if the roster or the settings have errors, or the record could not be read, which is shown: what
     * rests on a record that isn't there would be told as if nobody had done anything.
     */
    public Optional<Roster> roster() {
        if (folder.isUnjudged()) {
            show(folder.folderFindings());
            return Optional.empty();
        }
        show(classes.findings());
        if (classes.roster().isEmpty()) {
            say(Message.of(ClassRun.class, "roster.first"));
        } else if (classes.isRecordBroken()) {
            say(Message.of(ClassRun.class, "record.first", ClassFiles.RECORD));
            return Optional.empty();
        }
        return classes.roster();
    }

    /** The class of that name or path; nothing if something of it has errors, which are shown. */
    public Optional<Tonight> tonight(String named) {
        Path file = file(named);
        return roster().flatMap(roster -> brief(file).flatMap(brief -> planned(file, roster, brief)));
    }

    private Path file(String named) {
        return classes.named(named)
                .or(() -> Locations.existing(run.here(), named)
                        .or(() -> Locations.existing(folder.root(), named))
                        .filter(Files::isRegularFile))
                .orElseThrow(() -> new CannotRun(unknown(named)));
    }

    private Message unknown(String named) {
        return Nearest.to(named, classes.names())
                .map(near -> Message.of(ClassRun.class, "no.class.near", named, ClassFiles.CLASSES, near))
                .orElseGet(() -> Message.of(ClassRun.class, "no.class", named, ClassFiles.CLASSES));
    }

    private Optional<ClassBrief> brief(Path file) {
        try {
            Reading<ClassBrief> reading = classes.read(file);
            show(reading.findings());
            if (reading.value().isEmpty()) {
                run.sayWhyNot(Message.of(ClassRun.class, "class.first"));
            }
            return reading.value();
        } catch (IOException problem) {
            throw new CannotRun(Message.of(ClassRun.class, "unreadable", file), problem);
        }
    }

    private Optional<Tonight> planned(Path file, Roster roster, ClassBrief brief) {
        Wished wished = Wished.of(folder.school(), brief, classes.drills());
        List<Finding> errors = new ArrayList<>();
        List<String> ids = new ArrayList<>(wished.absent());
        wished.drills().forEach(drill -> ids.add(drill.id()));
        for (String id : ids) {
            folder.entry(id)
                    .filter(entry -> !entry.isSound())
                    .ifPresent(entry -> entry.findings().stream()
                            .filter(finding -> finding.severity() == Severity.ERROR)
                            .forEach(errors::add));
        }
        if (!errors.isEmpty() || !wished.absent().isEmpty()) {
            show(errors);
            run.sayWhyNot(Message.of(ClassRun.class, "drill.errors"));
            return Optional.empty();
        }
        ClassPlan plan = ClassPlan.of(folder.school(), roster, brief, classes.history(), wished);
        return told(file, roster, plan);
    }

    private Optional<Tonight> told(Path file, Roster roster, ClassPlan plan) {
        String named = DrillFiles.id(file);
        try {
            ReadPlans kept = classes.plans(named, plan.brief().date());
            show(kept.findings());
            if (kept.findings().stream().anyMatch(finding -> finding.severity() == Severity.ERROR)) {
                run.sayWhyNot(Message.of(ClassRun.class, "plan.unreadable"));
                return Optional.empty();
            }
            Map<String, String> figures = new LinkedHashMap<>(classes.figures(file));
            figures.put("record", Fingerprint.figures(past(plan), FIGURES));
            return Optional.of(new Tonight(folder, classes, named, figures, roster, plan, kept.plans()));
        } catch (IOException problem) {
            throw new CannotRun(Message.of(ClassRun.class, "plans.unreadable", named), problem);
        }
    }

    private byte[] past(ClassPlan plan) {
        return classes.history()
                .before(plan.brief().date())
                .entries()
                .toString()
                .getBytes(StandardCharsets.UTF_8);
    }

    /** Findings go where they don't mix with what was asked for. */
    void show(List<Finding> findings) {
        run.showWhyNot(findings);
    }

    /** Says why nothing was planned. */
    void say(Message sentence) {
        run.sayWhyNot(sentence);
    }
}
