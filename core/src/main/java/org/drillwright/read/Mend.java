package org.drillwright.read;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * A slip in one line of a file, and the line as it should be.
 *
 * @param line counted from 1
 * @param column where the slip begins in the line, from 0
 * @param what one sentence on the slip
 * @param mended the whole line with its indent; several where the line has to be parted
 */
record Mend(int line, int column, String what, String mended) {

    private static final Pattern INDENT = Pattern.compile("^[\\s\u00a0]*");

    /** Letters of a line that are written out; nobody copies more of it from a finding. */
    private static final int WRITTEN_OUT = 400;

    /** The advice to write a line so; says how many spaces stand in front where those are what changes. */
    static String advice(String original, String mended) {
        if (mended.contains("\n")) {
            return "Write two lines: "
                    + mended.lines()
                            .map(line -> "'" + line.strip() + "' " + spaces(line))
                            .collect(Collectors.joining(", and "))
                    + ".";
        }
        String where = indent(original).equals(indent(mended)) ? "" : ", " + spaces(mended);
        return "Write" + where + ": " + shown(mended.strip());
    }

    private static String shown(String line) {
        return line.codePointCount(0, line.length()) <= WRITTEN_OUT
                ? line
                : line.substring(0, line.offsetByCodePoints(0, WRITTEN_OUT)) + "…";
    }

    private static String spaces(String line) {
        int spaces = indent(line).length();
        return "with " + (spaces == 0 ? "no space" : spaces == 1 ? "1 space" : spaces + " spaces") + " in front";
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
