package org.drillwright.register;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The words in which a batch's first and last lines are written. */
final class BatchWords {

    /** Figures of an id. */
    static final int ID = 8;

    private static final Pattern FIRST = Pattern.compile("batch ([0-9a-f]{" + ID + "}) (\\d{1,6})");
    private static final Pattern LAST = Pattern.compile("done ([0-9a-f]{" + ID + "})");

    private BatchWords() {}

    static String first(String id, int lines) {
        return "batch " + id + " " + lines;
    }

    static String last(String id) {
        return "done " + id;
    }

    static Matcher readFirst(String words) {
        return FIRST.matcher(words);
    }

    static Matcher readLast(String words) {
        return LAST.matcher(words);
    }
}
