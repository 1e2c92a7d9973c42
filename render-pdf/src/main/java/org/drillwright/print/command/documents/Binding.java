package org.drillwright.print.command.documents;

import java.util.Locale;

/** How the pages of a booklet lie on paper. */
public enum Binding {
    /** Two on each side of a sheet, in the order in which sheets are folded one inside the other. */
    FOLDED,
    /** The same pages one by one, in the order of reading. */
    SINGLE,
    /** A page as large as the sheet, in larger type. */
    LARGE;

    /** The word that the command line uses. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
