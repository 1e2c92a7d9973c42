package org.drillwright.formatter;

import java.util.ArrayList;
import java.util.List;

/** Breaks a long text into lines that YAML joins again with single spaces. */
final class Folding {

    private Folding() {}

    /** Lines of at most so many characters, broken at single spaces only; a longer word has a line of its own. */
    static List<String> lines(String text, int width) {
        List<String> lines = new ArrayList<>();
        int start = 0;
        int last = -1;
        for (int at = 0; at < text.length(); at++) {
            if (isBreak(text, at)) {
                if (last >= 0 && text.codePointCount(start, at) > width) {
                    lines.add(text.substring(start, last));
                    start = last + 1;
                }
                last = at;
            }
        }
        if (last > start && text.codePointCount(start, text.length()) > width) {
            lines.add(text.substring(start, last));
            start = last + 1;
        }
        lines.add(text.substring(start));
        return lines;
    }

    /** A single space between two signs. */
    private static boolean isBreak(String text, int at) {
        return text.charAt(at) == ' '
                && at > 0
                && at + 1 < text.length()
                && text.charAt(at - 1) != ' '
                && text.charAt(at + 1) != ' ';
    }
}
