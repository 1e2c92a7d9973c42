package org.drillwright.check.mutation;

import java.util.List;
import org.drillwright.check.Sample;
import org.drillwright.source.Finding;
import org.drillwright.source.Severity;

/**
 * A mutant, and what the rules said of it.
 *
 * @param said all errors and warnings, as {@code rule at count}
 */
record Trial(Operator operator, String drill, Mutant mutant, List<String> said) {

    static Trial of(Operator operator, Mutant mutant, Sample judged) {
        List<String> said = judged.findings().stream()
                .filter(finding -> finding.severity() != Severity.NOTE)
                .map((Finding finding) -> judged.said(finding))
                .distinct()
                .toList();
        return new Trial(operator, judged.id(), mutant, said);
    }

    boolean isHarmful() {
        return !mutant.harmless();
    }

    /** Whether an expected finding stands at its expected count. */
    boolean found() {
        return mutant.expected().stream().map(Expected::toString).anyMatch(said::contains);
    }
}
