package org.drillwright.check;

import java.util.List;
import java.util.OptionalInt;
import org.drillwright.source.Finding;
import org.drillwright.source.Severity;
import org.drillwright.source.Span;

/**
 * A drill of a corpus, read, played and judged.
 *
 * @param text the file as it stands
 * @param findings all that reading and the rules found in it
 */
public record Sample(String id, String text, Subject subject, List<Finding> findings) {

    public Sample {
        findings = List.copyOf(findings);
    }

    public List<Finding> errors() {
        return of(Severity.ERROR);
    }

    public List<Finding> warnings() {
        return of(Severity.WARNING);
    }

    private List<Finding> of(Severity severity) {
        return findings.stream()
                .filter(finding -> finding.severity() == severity)
                .toList();
    }

    /** The count, from 1, whose lines hold a finding; empty if it stands outside the counts. */
    public OptionalInt count(Finding finding) {
        for (int step = 0; step < subject.drill().steps().size(); step++) {
            Span place = subject.span(Subject.stepPath(step));
            if (finding.span().start() >= place.start() && finding.span().start() < place.end()) {
                return OptionalInt.of(step + 1);
            }
        }
        return OptionalInt.empty();
    }

    /** {@code rule at count}, or {@code rule} alone outside the counts. */
    public String said(Finding finding) {
        OptionalInt count = count(finding);
        return count.isPresent() ? finding.rule() + " at " + count.getAsInt() : finding.rule();
    }

    public List<String> said(List<Finding> some) {
        return some.stream()
                .map(finding -> said(finding) + ": " + finding.what().english())
                .toList();
    }
}
