package org.drillwright.print.command.console;

import java.util.function.IntSupplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The right edge of a terminal: lines that are longer are broken at a space, and what follows begins under the words. Lines
 * of a file that are shown with their numbers stay whole, since a caret below points into them.
 */
final class Margin {

    /** No terminal is wider than it has to be for this: nobody has to be asked for its width. */
    private static final int FITS_EVERYWHERE = 40;

    private static final int NARROWEST = 20;

    /** Spaces, and the number of a list if one stands there. */
    private static final Pattern INDENT = Pattern.compile("^ *(?:\\d+ {2,})?");

    private static final Pattern QUOTED = Pattern.compile("^ *\\d* \\|.*");

    private static final String COLOUR = "\\x1B\\[[0-9;]*m";

    private final IntSupplier width;
    private int column;

    /** @param width of the terminal in columns; asked only when a line is long */
    Margin(IntSupplier width) {
        this.width = width;
    }

    /** Somebody else, such as who typed an answer, has begun a new line. */
    void begin() {
        column = 0;
    }

    /** The same text, its lines broken; remembers where the last one ended. */
    String within(String text) {
        StringBuilder all = new StringBuilder();
        for (String line : text.split("(?<=\n)")) {
            all.append(fitted(line));
            boolean ended = line.endsWith("\n");
            column = ended || line.indexOf('\r') >= 0 ? 0 : column + length(line);
        }
        return all.toString();
    }

    private String fitted(String line) {
        String words = line.stripTrailing();
        if (column + length(words) <= FITS_EVERYWHERE || words.indexOf('\r') >= 0) {
            return line;
        }
        int edge = Math.max(NARROWEST, width.getAsInt());
        if (column + length(words) <= edge || QUOTED.matcher(words).matches()) {
            return line;
        }
        return broken(words, edge) + line.substring(words.length());
    }

    private String broken(String words, int edge) {
        Matcher start = INDENT.matcher(words);
        int indent = column == 0 && start.find() ? Math.min(start.end(), edge / 2) : 0;
        StringBuilder all = new StringBuilder();
        int at = column;
        boolean begun = column > 0;
        for (String word : words.split("(?<=[^ ])(?= )")) {
            if (begun && at + length(word) > edge) {
                all.append('\n').append(" ".repeat(indent)).append(word.stripLeading());
                at = indent + length(word.stripLeading());
            } else {
                all.append(word);
                at += length(word);
            }
            begun = true;
        }
        return all.toString();
    }

    private static int length(String text) {
        String seen = text.replaceAll(COLOUR, "").replace("\n", "");
        return seen.codePointCount(0, seen.length());
    }
}
