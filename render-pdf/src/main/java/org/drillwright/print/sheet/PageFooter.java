package org.drillwright.print.sheet;

import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What stands at the foot of a sheet's pages. */
public final class PageFooter {

    private PageFooter() {}

    /** Parts that are blank are left out. */
    public static String words(String... parts) {
        return Stream.of(parts).filter(part -> !part.isBlank()).collect(Collectors.joining(" \u00B7 "));
    }
}
