package org.drillwright.print.command.console;

import java.util.ArrayList;
import java.util.List;

/** Breaks a paragraph into lines at its spaces. */
public final class TextColumn {

    /** What fits a terminal that nobody has widened. */
    public static final int WIDTH = 78;

    private TextColumn() {}

    /** Lines of at most so many characters; a longer word has a line of its own. */
    public static List<String> wrap(String paragraph, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : paragraph.strip().split("\\s+")) {
            if (!line.isEmpty() && length(line) + 1 + length(word) > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.isEmpty() ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }

    private static int length(CharSequence text) {
        return Character.codePointCount(text, 0, text.length());
    }
}
