package org.drillwright.read;

import java.util.List;
import java.util.regex.Pattern;

/** Lines of YAML in the making; a text that is absent leaves no line. */
final class YamlLines {

    /** Texts that stand safely without quotes: letters, figures and the mildest punctuation. */
    private static final Pattern PLAIN = Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{M}\\p{N} ,.;()!?'/+-]*");

    private final StringBuilder text;
    private final String indent;
    private String next;

    YamlLines() {
        this(new StringBuilder(), "", "");
    }

    private YamlLines(StringBuilder text, String indent, String next) {
        this.text = text;
        this.indent = indent;
        this.next = next;
    }

    /** A key with its value, unless that is empty. */
    void text(String key, String value) {
        if (!value.isEmpty()) {
            line(scalar(key) + ": " + scalar(value));
        }
    }

    /** A key with a list of texts, unless that is empty. */
    void list(String key, List<String> values) {
        if (!values.isEmpty()) {
            key(key);
            values.forEach(value -> line("  - " + scalar(value)));
        }
    }

    void emptyList(String key) {
        line(scalar(key) + ": []");
    }

    /** A key alone; what belongs to it follows further in. */
    void key(String key) {
        line(scalar(key) + ":");
    }

    /** Lines further in. */
    YamlLines indented() {
        return new YamlLines(text, indent + "  ", indent + "  ");
    }

    /** Lines of a list's item, the first with a dash. */
    YamlLines item() {
        return new YamlLines(text, indent + "    ", indent + "  - ");
    }

    /** An item in which nothing stands is written as such. */
    void endItem() {
        if (!next.equals(indent)) {
            line("{}");
        }
    }

    private void line(String content) {
        text.append(next).append(content).append('\n');
        next = indent;
    }

    static String scalar(String value) {
        return PLAIN.matcher(value).matches() && !value.endsWith(" ") ? value : '"' + escaped(value) + '"';
    }

    private static String escaped(String value) {
        StringBuilder escaped = new StringBuilder();
        value.codePoints().forEach(point -> {
            switch (point) {
                case '"' -> escaped.append("\\\"");
                case '\\' -> escaped.append("\\\\");
                case '\n' -> escaped.append("\\n");
                case '\r' -> escaped.append("\\r");
                case '\t' -> escaped.append("\\t");
                default -> escaped.appendCodePoint(point);
            }
        });
        return escaped.toString();
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
