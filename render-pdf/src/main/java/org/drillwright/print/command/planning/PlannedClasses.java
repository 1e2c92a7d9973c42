package org.drillwright.print.command.planning;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.drillwright.plan.roster.ClassBrief;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.school.ClassFolder;
import org.drillwright.school.SchoolFolder;
import org.drillwright.school.TermFolder;
import org.drillwright.school.TranslationFolder;
import org.drillwright.source.Finding;
import org.drillwright.wording.Message;

/** A school's roster, classes and record. */
public final class PlannedClasses {

    private PlannedClasses() {}

    public static ClassFolder open(SchoolFolder folder) {
        try {
            return ClassFolder.open(folder);
        } catch (IOException problem) {
            throw new CannotRun(Message.of(PlannedClasses.class, "people.unreadable", folder.root()), problem);
        }
    }

    /** The classes of a school by name, each with its day if that can be read. */
    public static Map<String, Optional<LocalDate>> dated(SchoolFolder folder) {
        ClassFolder classes = open(folder);
        Map<String, Optional<LocalDate>> dated = new LinkedHashMap<>();
        classes.names()
                .forEach(name -> dated.put(
                        name,
                        classes.named(name)
                                .flatMap(file -> brief(classes, file))
                                .map(ClassBrief::date)));
        return dated;
    }

    private static Optional<ClassBrief> brief(ClassFolder classes, Path file) {
        try {
            return classes.read(file).value();
        } catch (IOException unreadable) {
            return Optional.empty();
        }
    }

    /** The terms of a school. */
    public static TermFolder terms(SchoolFolder folder) {
        return terms(folder, open(folder));
    }

    static TermFolder terms(SchoolFolder folder, ClassFolder classes) {
        try {
            return TermFolder.open(folder, classes);
        } catch (IOException problem) {
            throw new CannotRun(Message.of(PlannedClasses.class, "terms.unreadable", folder.root()), problem);
        }
    }

    /** All that is wrong with them, with the terms, the plans that were kept and the translations. */
    public static List<Finding> findings(SchoolFolder folder) {
        return findings(folder, file -> true);
    }

    /**
     * What is wrong with some of them. Where the roster has an error nothing else can be read, so that is told for each.
     *
     * @param wanted told the name of a file below the school's folder
     */
    public static List<Finding> findings(SchoolFolder folder, Predicate<String> wanted) {
        ClassFolder classes = open(folder);
        List<Finding> findings = new ArrayList<>(classes.findings());
        try {
            findings.addAll(classes.classFindings());
            findings.addAll(classes.planFindings());
            findings.addAll(TermFolder.open(folder, classes).findings());
            findings.addAll(new TranslationFolder(folder).findings());
            return classes.roster().isEmpty()
                    ? findings
                    : findings.stream()
                            .filter(finding -> wanted.test(finding.file().name()))
                            .toList();
        } catch (IOException problem) {
            throw new CannotRun(Message.of(PlannedClasses.class, "classes.unreadable", folder.root()), problem);
        }
    }
}
