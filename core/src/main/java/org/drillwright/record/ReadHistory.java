package org.drillwright.record;

import java.util.Comparator;
import java.util.List;
import org.drillwright.source.Finding;

/**
 * What came of reading a record.
 *
 * @param history the lines that could be read, each fact once
 * @param findings the lines that could not, and those that are doubtful, by place
 */
public record ReadHistory(History history, List<Finding> findings) {

    public ReadHistory {
        findings = findings.stream()
                .sorted(Comparator.comparingInt(finding -> finding.span().start()))
                .toList();
    }
}
