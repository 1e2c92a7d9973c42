package org.drillwright.report;

import java.util.List;
import java.util.Locale;
import org.drillwright.source.Finding;
import org.drillwright.source.LineColumn;

/** Findings for editors: {@code file:line:column: severity: what way-out (rule)}, one line each. */
public final class LineReport {

    private LineReport() {}

    public static String of(List<Finding> findings, Locale language) {
        StringBuilder text = new StringBuilder();
        for (Finding finding : findings) {
            LineColumn position = finding.position();
            String words = finding.words().in(language).replaceAll("\\s+", " ");
            text.append(DisplayWidth.shown(finding.file().name()))
                    .append(':')
                    .append(position.line())
                    .append(':')
                    .append(position.column())
                    .append(": ")
                    .append(finding.severity().word())
                    .append(": ")
                    .append(words)
                    .append(" (")
                    .append(finding.rule())
                    .append(")\n");
        }
        return text.toString();
    }
}
