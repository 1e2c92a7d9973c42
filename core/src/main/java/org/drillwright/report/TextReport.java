package org.drillwright.report;

import java.util.List;
import java.util.Locale;
import org.drillwright.source.Finding;
import org.drillwright.source.Position;

/** Findings for people: where, how bad, the line with a mark under the very words, what, and the way out. */
public final class TextReport {

    private TextReport() {}

    /** One block a finding, an empty line between two. */
    public static String of(List<Finding> findings, Paint paint) {
        StringBuilder text = new StringBuilder();
        for (Finding finding : findings) {
            text.append(of(finding, paint)).append('\n');
        }
        return text.toString();
    }

    private static String of(Finding finding, Paint paint) {
        Position position = finding.position();
        StringBuilder text = new StringBuilder();
        text.append(paint.place(Columns.shown(finding.file().name()) + ", line " + position.line() + ", column "
                        + position.column()))
                .append(": ")
                .append(paint.severity(finding.severity(), finding.severity().word()))
                .append(" (")
                .append(finding.rule())
                .append(")\n");
        if (!finding.file().text().isEmpty()) {
            Snippet snippet = Snippet.of(finding);
            text.append(paint.quiet(String.format(Locale.ROOT, "%5d | ", snippet.number())))
                    .append(snippet.line())
                    .append('\n')
                    .append(paint.quiet("      | "))
                    .append(snippet.indent())
                    .append(paint.caret(finding.severity(), snippet.mark()))
                    .append('\n');
        }
        text.append("  ").append(Columns.shown(finding.what())).append('\n');
        if (!finding.wayOut().isEmpty()) {
            text.append("  ").append(finding.wayOut()).append('\n');
        }
        return text.toString();
    }
}
