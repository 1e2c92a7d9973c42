package org.drillwright.print.command.classes;

import java.util.Locale;

/** How a table is told. */
public enum TableFormat {
    TEXT,
    CSV;

    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
