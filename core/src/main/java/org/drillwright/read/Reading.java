package org.drillwright.read;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.drillwright.source.Finding;

/**
 * What came of reading a file.
 *
 * @param value what was read; empty if the file has an error, for a file never half-loads
 * @param findings every problem of the file, by place
 */
public record Reading<T>(Optional<T> value, List<Finding> findings) {

    public Reading {
        findings = findings.stream()
                .sorted(Comparator.comparingInt(finding -> finding.span().start()))
                .toList();
    }
}
