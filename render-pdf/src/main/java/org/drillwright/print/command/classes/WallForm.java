package org.drillwright.print.command.classes;

import java.util.Locale;

/** By what people find themselves on the wall. */
public enum WallForm {
    NAME,
    ROUND;

    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
