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
import org.drillwright.wording.Message;

/** Finds what has the name of a file that a school may have, and is none: a folder, a pipe, a link that leads nowhere. */
final class OddFiles {

    private static final Message WHAT = Message.of(OddFiles.class, "odd");

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
                one ? Message.of(OddFiles.class, "link") : Message.counted(OddFiles.class, "link.and", odd.size() - 1),
                Message.of(OddFiles.class, "link.way"));
    }

    /** One warning of all folders that could not be looked into. */
    static Optional<Finding> warning(Path root, List<Path> closed) {
        boolean one = closed.size() == 1;
        return told(
                root,
                closed,
                Severity.WARNING,
                one
                        ? Message.of(OddFiles.class, "closed")
                        : Message.counted(OddFiles.class, "closed.and", closed.size() - 1),
                Message.of(OddFiles.class, "closed.way"));
    }

    private static Optional<Finding> told(
            Path root, List<Path> places, Severity severity, Message what, Message wayOut) {
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
        return finding.what().equals(WHAT);
    }

    private static Finding finding(String name) {
        return new Finding(
                ReadingRule.NOT_PLAIN_TEXT.id(),
                Severity.ERROR,
                new SourceFile(name, ""),
                Span.at(0),
                WHAT,
                Message.of(OddFiles.class, "odd.way"));
    }
}
