package org.drillwright.print.command;

import java.util.Locale;

/** How findings are written. */
enum ReportFormat {
    TEXT,
    LINE,
    JSON,
    SARIF;

    String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
