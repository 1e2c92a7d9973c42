package org.drillwright.explain;

import java.util.List;
import org.drillwright.check.Subject;
import org.drillwright.check.jury.Judge;
import org.drillwright.source.Finding;
import org.drillwright.source.Span;

/** What the rules find in each count of a drill. */
final class CountFindings {

    private final Subject subject;
    private final List<Finding> findings;

    private CountFindings(Subject subject) {
        this.subject = subject;
        this.findings = Judge.drill(subject);
    }

    static CountFindings of(Subject subject) {
        return new CountFindings(subject);
    }

    /** By place, counts numbered from 0. */
    List<Finding> in(int step) {
        return subject.places()
                .field(Subject.stepPath(step))
                .map(field -> field.value())
                .map(count -> findings.stream()
                        .filter(finding -> isWithin(finding.span(), count))
                        .toList())
                .orElse(List.of());
    }

    private static boolean isWithin(Span span, Span count) {
        return span.start() >= count.start() && span.start() < count.end();
    }
}
