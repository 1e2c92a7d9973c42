package org.drillwright.report;

import java.util.List;
import org.drillwright.source.Finding;
import org.drillwright.source.Severity;

/**
 * What a run looked at and found.
 *
 * @param drills files looked at
 */
public record Tally(int drills, long errors, long warnings, long notes) {

    public static Tally of(int drills, List<Finding> findings) {
        return new Tally(
                drills,
                count(findings, Severity.ERROR),
                count(findings, Severity.WARNING),
                count(findings, Severity.NOTE));
    }

    private static long count(List<Finding> findings, Severity severity) {
        return findings.stream()
                .filter(finding -> finding.severity() == severity)
                .count();
    }

    /** One sentence, such as {@code 30 drills: 3 errors, 1 warning, no notes}. */
    public String sentence() {
        return many(drills, "drill") + ": " + many(errors, "error") + ", " + many(warnings, "warning") + ", "
                + many(notes, "note");
    }

    private static String many(long number, String noun) {
        return (number == 0 ? "no" : Long.toString(number)) + " " + noun + (number == 1 ? "" : "s");
    }
}
