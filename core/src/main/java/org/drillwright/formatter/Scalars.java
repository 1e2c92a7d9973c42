package org.drillwright.formatter;

import java.util.regex.Pattern;

/** How a text is written in one line: without quotes where that is safe, or else between them. */
public final class Scalars {

    /** What other readers of YAML take for no text: nothing, yes and no, numbers, times and dates (YAML 1.1 and 1.2). */
    private static final Pattern NO_TEXT = Pattern.compile("(?i)~|null|true|false|yes|no|on|off|y|n|=|<<"
            + "|[-+]?(\\.[0-9][0-9_]*|[0-9][0-9_,]*(\\.[0-9_]*)?)(e[-+]?[0-9]+)?|[-+]?\\.(inf|nan)"
            + "|[-+]?0[xob][0-9a-f_]+|[-+]?[0-9][0-9_]*(:[0-5]?[0-9])+(\\.[0-9_]*)?"
            + "|[0-9]{4}-[0-9]{1,2}-[0-9]{1,2}([t ].*)?");

    private static final Pattern BEGINS_WITH_SIGN = Pattern.compile("[,\\[\\]{}#&*!|>'\"%@`].*|[-?:]([ ,\\[\\]{}].*)?");
    private static final Pattern HOLDS_SIGN = Pattern.compile(".*(: | #).*|.*:");
    private static final Pattern HOLDS_BRACKET_SIGN = Pattern.compile(".*[,\\[\\]{}:?].*");
    private static final Pattern ESCAPED = Pattern.compile("[\\t\\n\\r]");

    private Scalars() {}

    /**
     * A text in one line.
     *
     * @param bracketed whether it stands in a list between brackets
     * @param isText whether it is a text, so that what looks like a number needs quotes
     */
    public static String of(String text, boolean bracketed, boolean isText) {
        boolean safe = !text.isEmpty()
                && !ESCAPED.matcher(text).find()
                && !BEGINS_WITH_SIGN.matcher(text).matches()
                && !HOLDS_SIGN.matcher(text).matches()
                && !(bracketed && HOLDS_BRACKET_SIGN.matcher(text).matches())
                && !(isText && NO_TEXT.matcher(text).matches());
        return safe ? text : quoted(text);
    }

    /** Between double quotes; between single ones if double ones or a backslash would need a sign of their own. */
    static String quoted(String text) {
        boolean escapes = ESCAPED.matcher(text).find();
        if (!escapes && (text.contains("\"") || text.contains("\\"))) {
            return "'" + text.replace("'", "''") + "'";
        }
        return '"'
                + text.replace("\\", "\\\\")
                        .replace("\"", "\\\"")
                        .replace("\t", "\\t")
                        .replace("\n", "\\n")
                        .replace("\r", "\\r")
                + '"';
    }
}
