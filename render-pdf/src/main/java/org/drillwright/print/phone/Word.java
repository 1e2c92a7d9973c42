package org.drillwright.print.phone;

import java.util.Locale;

/** What the page itself says. Its key in the files of words is its name in lower case with dots. */
enum Word {
    DRILLS,
    ALL_DRILLS,
    BY_COUNT,
    OPEN,
    CLOSE,
    NEXT,
    BACK,
    CARD,
    RUN,
    STOP,
    TIME,
    COUNTS,
    COUNTS_ONE,
    COUNT,
    SAID,
    SEARCH,
    LEVELS,
    SIZE,
    SIZE_ONE,
    FOUND,
    FOUND_LEVEL,
    DONE,
    DONE_DRILL,
    RECORD,
    CLASS,
    COPY,
    COPIED,
    COPY_YOURSELF,
    CLEAR,
    STAYS,
    FORGETS,
    CELLS,
    BAR,
    NEEDS_NO_NETWORK;

    String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '.');
    }
}
