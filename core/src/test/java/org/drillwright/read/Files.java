package org.drillwright.read;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.drillwright.model.Drill;
import org.drillwright.model.School;
import org.drillwright.source.Finding;
import org.drillwright.source.Severity;

/** Reads texts as drill files. */
final class Files {

    /** A drill that reads, of invented words. */
    static final String GOOD = """
            title: Parry of quarte
            level: intermediate
            form: partner
            weapon: foil
            gear: [mask, jacket]
            steps:
              - leader: Extend and lunge.
                follower: Parry quarte.
                distance: lunge
                safety: Arrive softly and let the blade bend.
              - leader: Recover on guard.
                follower: Hold on guard.
                distance: lunge
            closing: Salute.
            """;

    private static final DrillReader READER = new DrillReader(School.DEFAULT);

    private Files() {}

    static Reading<ReadDrill> read(String text) {
        return read(text.getBytes(StandardCharsets.UTF_8));
    }

    static Reading<ReadDrill> read(byte[] bytes) {
        return READER.read("a-drill", "a-drill.yaml", bytes);
    }

    /** The drill of a text in which nothing is wrong. */
    static Drill drill(String text) {
        Reading<ReadDrill> reading = read(text);
        return reading.value()
                .orElseThrow(() -> new AssertionError(shown(reading.findings()) + "\n" + text))
                .drill();
    }

    /** The good drill with one stretch of its text put in place of another. */
    static String with(String stretch, String other) {
        if (!GOOD.contains(stretch)) {
            throw new IllegalArgumentException("the drill has no '" + stretch + "'");
        }
        return GOOD.replace(stretch, other);
    }

    /** Findings as {@code severity rule line:column 'the words'}. */
    static List<String> shown(List<Finding> findings) {
        return findings.stream()
                .map(finding -> finding.severity().word() + " " + finding.rule() + " "
                        + finding.position().line() + ":" + finding.position().column() + " '"
                        + finding.file().slice(finding.span()) + "'")
                .toList();
    }

    /** The one error of a text. */
    static Finding onlyError(String text) {
        List<Finding> errors = read(text).findings().stream()
                .filter(finding -> finding.severity() == Severity.ERROR)
                .toList();
        if (errors.size() != 1) {
            throw new AssertionError(shown(errors) + "\n" + text);
        }
        return errors.get(0);
    }
}
