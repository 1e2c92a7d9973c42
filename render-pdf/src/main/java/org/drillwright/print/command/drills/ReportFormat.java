package org.drillwright.print.command.drills;

import java.util.Locale;

/** How findings are written. */
public enum ReportFormat {
    TEXT,
    LINE,
    JSON,
    SARIF;

    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
