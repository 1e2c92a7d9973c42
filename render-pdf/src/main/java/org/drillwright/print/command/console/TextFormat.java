package org.drillwright.print.command.console;

import java.util.Locale;

/** Whom an answer is for: people, or programs. */
public enum TextFormat {
    TEXT,
    JSON;

    /** What the help of each option of this kind says. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
