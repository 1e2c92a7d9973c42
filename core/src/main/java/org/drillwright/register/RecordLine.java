package org.drillwright.register;

import java.util.List;

/**
 * What a line tells: that something was, or that it is taken back.
 *
 * @param entry the fact
 */
public record RecordLine(Entry entry, boolean takenBack) {

    private static final String TAKEN_BACK = "taken back: ";

    static RecordLine told(Entry entry) {
        return new RecordLine(entry, false);
    }

    static RecordLine takenBack(Entry entry) {
        return new RecordLine(entry, true);
    }

    /** Whether the words of an event take it back. */
    static boolean takesBack(String words) {
        return words.startsWith(TAKEN_BACK);
    }

    /** The event without the words that take it back. */
    static String eventOf(String words) {
        return takesBack(words) ? words.substring(TAKEN_BACK.length()).strip() : words;
    }

    /** The cells of the line in the file. */
    List<String> cells() {
        return List.of(
                entry.date().toString(),
                entry.person(),
                entry.drill(),
                (takenBack ? TAKEN_BACK : "") + entry.event().word(),
                entry.with());
    }
}
