package org.drillwright.print.diagram;

import org.drillwright.model.Language;

/** Single words of the pictures, for tables beside them. */
public final class Said {

    private Said() {}

    /** A line by its name, such as {@code high-inside}: {@code the high inside line}. */
    public static String line(String name, Language language) {
        return Words.in(language).text("line." + dotted(name));
    }

    /** A position of the hand by its name, such as {@code quarte}. */
    public static String position(String name, Language language) {
        return Words.in(language).text("position." + dotted(name));
    }

    /** A measure by its name, such as {@code advance-lunge}: {@code at advance-lunge distance}. */
    public static String measure(String name, Language language) {
        return Words.in(language).text("measure." + dotted(name));
    }

    private static String dotted(String name) {
        return name.replace('-', '.');
    }
}
