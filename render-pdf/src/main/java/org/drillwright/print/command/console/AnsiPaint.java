package org.drillwright.print.command.console;

import org.drillwright.report.Paint;
import org.drillwright.source.Severity;

/** Colours for a terminal (ECMA-48, select graphic rendition). */
final class AnsiPaint implements Paint {

    private static final String BOLD = "1";
    private static final String FAINT = "2";

    @Override
    public String severity(Severity severity, String word) {
        return painted(BOLD + ";" + colour(severity), word);
    }

    @Override
    public String place(String text) {
        return painted(BOLD, text);
    }

    @Override
    public String caret(Severity severity, String text) {
        return painted(colour(severity), text);
    }

    @Override
    public String quiet(String text) {
        return painted(FAINT, text);
    }

    private static String colour(Severity severity) {
        return switch (severity) {
            case ERROR -> "31";
            case WARNING -> "33";
            case NOTE -> "36";
        };
    }

    private static String painted(String how, String text) {
        return "\u001B[" + how + "m" + text + "\u001B[0m";
    }
}
