package org.drillwright.print.command.install;

import java.util.Locale;

/** Text set with the macros of manual pages; groff_man(7) and mandoc's man(7) tell what they do. */
final class Roff {

    private final StringBuilder text = new StringBuilder();

    /**
     * @param name of the page, such as drillwright-check
     * @param day of the release, such as 2026-09-01
     */
    Roff(String name, String day, String source) {
        text.append(".TH ")
                .append(quoted(name.toUpperCase(Locale.ROOT)))
                .append(" 1 ")
                .append('"' + day + '"')
                .append(' ')
                .append(quoted(source))
                .append('\n');
    }

    Roff section(String title) {
        text.append(".SH ").append(quoted(title)).append('\n');
        return this;
    }

    /** A part of a section. */
    Roff part(String title) {
        text.append(".SS ").append(quoted(title)).append('\n');
        return this;
    }

    Roff paragraph() {
        text.append(".PP\n");
        return this;
    }

    /** Running text; breaks between its lines begin a new paragraph. */
    Roff plain(String words) {
        boolean first = true;
        for (String part : words.strip().split("\\R+")) {
            if (!first) {
                paragraph();
            }
            text.append(line(part)).append('\n');
            first = false;
        }
        return this;
    }

    /** A term in bold, and what it means. */
    Roff term(String term, String meaning) {
        text.append(".TP\n\\fB").append(escaped(term)).append("\\fR\n");
        return plain(meaning);
    }

    /** A program's name in bold, then words on the same line. */
    Roff called(String name, String words) {
        text.append("\\fB").append(escaped(name)).append("\\fR");
        text.append(words.isEmpty() ? "" : " ").append(escaped(words)).append('\n');
        return this;
    }

    @Override
    public String toString() {
        return text.toString();
    }

    private static String quoted(String words) {
        return '"' + escaped(words).replace("\"", "\\(dq") + '"';
    }

    /** A line that begins with a dot or an apostrophe would be taken for a macro. */
    private static String line(String words) {
        String escaped = escaped(words.strip());
        return escaped.startsWith(".") || escaped.startsWith("'") ? "\\&" + escaped : escaped;
    }

    /** Hyphens as they are typed: a reader may copy an option out of the page. */
    private static String escaped(String words) {
        return words.replace("\\", "\\e").replace("-", "\\-").replace("'", "\\(aq");
    }
}
