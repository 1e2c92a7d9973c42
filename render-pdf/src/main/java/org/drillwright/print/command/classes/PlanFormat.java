package org.drillwright.print.command.classes;

import java.util.Locale;

/** How a plan is told. */
public enum PlanFormat {
    TEXT,
    JSON;

    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
