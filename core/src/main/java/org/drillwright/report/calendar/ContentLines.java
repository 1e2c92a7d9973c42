package org.drillwright.report.calendar;

import java.nio.charset.StandardCharsets;

/** Content lines of an iCalendar file (RFC 5545, section 3.1): ended by CR and LF, none longer than 75 octets. */
final class ContentLines {

    /** Octets of a line without its end. */
    private static final int LONGEST = 75;

    private final StringBuilder text = new StringBuilder();

    /** A property whose value is written as it is. */
    ContentLines line(String name, String value) {
        fold(name + ":" + value);
        return this;
    }

    /** A property that is a text (section 3.3.11): backslash, semicolon, comma and line ends are escaped. */
    ContentLines text(String name, String value) {
        return line(
                name,
                value.replace("\\", "\\\\")
                        .replace(";", "\\;")
                        .replace(",", "\\,")
                        .replaceAll("\\R", "\\\\n"));
    }

    /** A long line goes on behind a space; it is never cut within a character. */
    private void fold(String line) {
        int octets = 0;
        for (int point : line.codePoints().toArray()) {
            String one = Character.toString(point);
            int more = one.getBytes(StandardCharsets.UTF_8).length;
            if (octets + more > LONGEST) {
                text.append("\r\n ");
                octets = 1;
            }
            text.append(one);
            octets += more;
        }
        text.append("\r\n");
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
