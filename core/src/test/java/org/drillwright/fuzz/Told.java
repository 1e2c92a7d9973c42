package org.drillwright.fuzz;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.function.Predicate;
import org.drillwright.read.Reading;
import org.drillwright.source.Finding;
import org.drillwright.source.Severity;

/** What holds of all findings: they lie inside their file, in its order, none is told twice, and each says something. */
final class Told {

    private Told() {}

    /**
     * A file is read whole or an error says why not.
     *
     * @param lacks whether of a value that was read parts are known to be lost
     */
    static <T> void reading(Reading<T> reading, Predicate<T> lacks) {
        boolean error = reading.findings().stream().anyMatch(finding -> finding.severity() == Severity.ERROR);
        assertEquals(reading.value().map(lacks::test).orElse(true), error, () -> "read or told: " + reading.findings());
        inOrder(reading.findings());
    }

    /** Findings of one file. */
    static void inOrder(List<Finding> findings) {
        int before = 0;
        for (Finding finding : findings) {
            inside(finding);
            assertTrue(finding.span().start() >= before, () -> "out of order: " + findings);
            before = finding.span().start();
        }
        once(findings);
    }

    static void inside(Finding finding) {
        assertTrue(finding.span().end() <= finding.file().text().length(), finding::toString);
        assertTrue(finding.position().line() <= finding.file().lineCount(), finding::toString);
        assertFalse(finding.what().english().isBlank(), finding::toString);
        assertFalse((finding.what().english() + finding.wayOut().english()).contains("Optional"), finding::toString);
    }

    static void once(List<Finding> findings) {
        assertEquals(findings.size(), new HashSet<>(findings).size(), () -> "told twice: " + findings);
    }
}
