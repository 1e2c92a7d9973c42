package org.drillwright.report;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.drillwright.source.Finding;
import org.drillwright.source.LineColumn;
import org.drillwright.wording.Bundle;

/** Findings for people: where, how bad, the line with a mark under the very words, what, and the way out. */
public final class TextReport {

    private TextReport() {}

    /** One block a finding, an empty line between two; in English. */
    public static String of(List<Finding> findings, Paint paint) {
        return of(findings, paint, Locale.ENGLISH);
    }

    /** One block a finding, an empty line between two. */
    public static String of(List<Finding> findings, Paint paint, Locale language) {
        StringBuilder text = new StringBuilder();
        for (Finding finding : findings) {
            text.append(of(finding, paint, language)).append('\n');
        }
        return text.toString();
    }

    private static String of(Finding finding, Paint paint, Locale language) {
        Bundle words = Bundle.in(TextReport.class, language);
        LineColumn position = finding.position();
        StringBuilder text = new StringBuilder();
        text.append(paint.place(words.text(
                        "place", DisplayWidth.shown(finding.file().name()), position.line(), position.column())))
                .append(": ")
                .append(paint.severity(
                        finding.severity(),
                        words.text("severity." + finding.severity().word())))
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
        text.append("  ")
                .append(DisplayWidth.shown(finding.what().in(language)))
                .append('\n');
        if (!finding.wayOut().isEmpty()) {
            text.append("  ").append(shown(finding.wayOut().in(language))).append('\n');
        }
        return text.toString();
    }

    /** A way out may show lines to write. */
    private static String shown(String lines) {
        return lines.lines().map(DisplayWidth::shown).collect(Collectors.joining("\n"));
    }
}
