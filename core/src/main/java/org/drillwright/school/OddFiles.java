package org.drillwright.school;

import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.drillwright.read.ReadingRule;
import org.drillwright.source.Finding;
import org.drillwright.source.Severity;
import org.drillwright.source.SourceFile;
import org.drillwright.source.Span;

/** Finds what has the name of a file that a school may have, and is none: a folder, a pipe, a link that leads nowhere. */
final class OddFiles {

    private static final String WHAT =
            "This is not a file that can be read: it is a folder, a device, or a link to no file.";

    private OddFiles() {}

    /** The first of the names under which something lies that is no file. */
    static Optional<Finding> find(Path root, List<String> names) {
        return names.stream()
                .filter(name -> isOdd(root.resolve(name)))
                .map(OddFiles::finding)
                .findFirst();
    }

    /** One note on all that is named like a drill and is none; it hinders nothing. */
    static Optional<Finding> note(Path root, List<Path> odd) {
        boolean one = odd.size() == 1;
        return told(
                root,
                odd,
                Severity.NOTE,
                one
                        ? "This is a link or a device, not a file; it was not read."
                        : "This and " + (odd.size() - 1) + " more are links or devices, not files; they were not read.",
                "Put the file itself here; links are not followed.");
    }

    /** One warning of all folders that could not be looked into. */
    static Optional<Finding> warning(Path root, List<Path> closed) {
        boolean one = closed.size() == 1;
        return told(
                root,
                closed,
                Severity.WARNING,
                one
                        ? "This folder could not be opened; nothing in it was read."
                        : "This folder and " + (closed.size() - 1)
                                + " more could not be opened; nothing in them was read.",
                "Do you have permission to open it? If there are no drills in it, keep it elsewhere.");
    }

    private static Optional<Finding> told(Path root, List<Path> places, Severity severity, String what, String wayOut) {
        return places.stream()
                .findFirst()
                .map(first -> new Finding(
                        ReadingRule.NOT_PLAIN_TEXT.id(),
                        severity,
                        new SourceFile(DrillFiles.shown(root, first), ""),
                        Span.at(0),
                        what,
                        wayOut));
    }

    private static boolean isOdd(Path file) {
        return Files.exists(file, LinkOption.NOFOLLOW_LINKS) && !Files.isRegularFile(file);
    }

    static boolean isOdd(Finding finding) {
        return finding.what().english().equals(WHAT);
    }

    private static Finding finding(String name) {
        return new Finding(
                ReadingRule.NOT_PLAIN_TEXT.id(),
                Severity.ERROR,
                new SourceFile(name, ""),
                Span.at(0),
                WHAT,
                "Put the file itself here, or remove this.");
    }
}
