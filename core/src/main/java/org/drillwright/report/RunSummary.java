package org.drillwright.report;

import java.util.List;
import org.drillwright.source.Finding;
import org.drillwright.source.Severity;
import org.drillwright.wording.Message;

/**
 * What a run looked at and found.
 *
 * @param drills files looked at
 */
public record RunSummary(int drills, long errors, long warnings, long notes) {

    public static RunSummary of(int drills, List<Finding> findings) {
        return new RunSummary(
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

    /** One sentence, such as {@code 30 drills: 3 errors, 1 warning, no notes}, with no full stop behind it. */
    public Message sentence() {
        return Message.of(
                RunSummary.class,
                "tally",
                many("drills", drills),
                many("errors", errors),
                many("warnings", warnings),
                many("notes", notes));
    }

    private static Message many(String what, long number) {
        return number == 0
                ? Message.of(RunSummary.class, what + ".none")
                : Message.counted(RunSummary.class, what, number);
    }
}
