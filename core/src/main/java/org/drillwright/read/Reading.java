package org.drillwright.read;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.drillwright.source.Finding;
import org.drillwright.source.Severity;

/**
 * What came of reading a file.
 *
 * @param value what was read; empty if the file has an error but for such as lose a value without which the rest can be
 *     judged
 * @param findings every problem of the file, by place
 */
public record Reading<T>(Optional<T> value, List<Finding> findings) {

    /** What was read; empty if the file has any error. */
    public Optional<T> whole() {
        boolean faulty = findings.stream().anyMatch(finding -> finding.severity() == Severity.ERROR);
        return faulty ? Optional.empty() : value;
    }

    public Reading {
        findings = findings.stream()
                .sorted(Comparator.comparingInt(finding -> finding.span().start()))
                .toList();
    }
}
