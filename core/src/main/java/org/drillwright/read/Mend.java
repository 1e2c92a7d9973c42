package org.drillwright.read;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.drillwright.wording.Message;

/**
 * A slip in one line of a file, and the line as it should be.
 *
 * @param line counted from 1
 * @param column where the slip begins in the line, from 0
 * @param what one sentence on the slip
 * @param mended the whole line with its indent; several where the line has to be parted
 */
record Mend(int line, int column, Message what, String mended) {

    private static final Pattern INDENT = Pattern.compile("^[\\s\u00a0]*");

    /** Letters of a line that are written out; nobody copies more of it from a finding. */
    private static final int WRITTEN_OUT = 400;

    /** The advice to write a line so; says how many spaces stand in front where those are what changes. */
    static Message advice(String original, String mended) {
        int parted = mended.indexOf('\n');
        if (parted >= 0) {
            return Message.of(
                    Mend.class, "write.two", line(mended.substring(0, parted)), line(mended.substring(parted + 1)));
        }
        if (mended.isBlank()) {
            return Message.of(Mend.class, "write.empty");
        }
        String line = shown(mended.strip());
        return indent(original).equals(indent(mended))
                ? Message.of(Mend.class, "write", line)
                : indented("write", indent(mended).length(), line);
    }

    private static Message line(String line) {
        return indented("line", indent(line).length(), line.strip());
    }

    private static Message indented(String key, int spaces, String line) {
        return spaces == 0
                ? Message.of(Mend.class, key + ".bare", line)
                : Message.counted(Mend.class, key + ".indented", spaces, line);
    }

    private static String shown(String line) {
        return line.codePointCount(0, line.length()) <= WRITTEN_OUT
                ? line
                : line.substring(0, line.offsetByCodePoints(0, WRITTEN_OUT)) + "…";
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
