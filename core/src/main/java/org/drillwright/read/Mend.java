package org.drillwright.read;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A slip in one line of a file, and the line as it should be.
 *
 * @param line counted from 1
 * @param column where the slip begins in the line, from 0
 * @param what one sentence on the slip
 * @param mended the whole line with its indent
 */
record Mend(int line, int column, String what, String mended) {

    private static final Pattern INDENT = Pattern.compile("^[\\s\u00a0]*");

    /** The advice to write a line so; says how many spaces stand in front where those are what changes. */
    static String advice(String original, String mended) {
        String text = mended.strip();
        int spaces = indent(mended).length();
        if (indent(original).equals(" ".repeat(spaces))) {
            return "Write: " + text;
        }
        return "Write, with " + (spaces == 0 ? "no space" : spaces == 1 ? "1 space" : spaces + " spaces")
                + " in front: " + text;
    }

    static String indent(String line) {
        Matcher indent = INDENT.matcher(line);
        return indent.find() ? indent.group() : "";
    }

    /** A text between straight quotes that YAML reads back as that text. */
    static String quoted(String text) {
        boolean simple = text.indexOf('"') < 0 && text.indexOf('\\') < 0;
        if (!simple && text.indexOf('\'') < 0) {
            return "'" + text + "'";
        }
        return '"' + text.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
    }
}
