package org.drillwright.source;

import java.util.Locale;

/** How much a finding weighs, the heaviest first. */
public enum Severity {
    /** The material is wrong: it isn't printed without being marked as a draft. */
    ERROR,
    /** Worth mending, or worth a written reason for leaving it; fails a strict run. */
    WARNING,
    /** Worth knowing; never changes the outcome of a run. */
    NOTE;

    /** The word that is printed. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
