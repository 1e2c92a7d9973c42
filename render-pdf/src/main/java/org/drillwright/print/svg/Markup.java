package org.drillwright.print.svg;

/** XML being written. Values are escaped; names come from this room only. */
final class Markup {

    private static final int THOUSANDTHS = 1000;

    private final StringBuilder text = new StringBuilder();

    /** Begins a tag, to be closed by {@link #inside()} or {@link #empty()}. */
    Markup tag(String name) {
        text.append('<').append(name);
        return this;
    }

    Markup with(String attribute, String value) {
        text.append(' ').append(attribute).append("=\"");
        text.append(Escaped.of(value)).append('"');
        return this;
    }

    Markup with(String attribute, double value) {
        text.append(' ').append(attribute).append("=\"");
        number(value);
        text.append('"');
        return this;
    }

    Markup inside() {
        text.append('>');
        return this;
    }

    Markup empty() {
        text.append("/>\n");
        return this;
    }

    Markup end(String name) {
        text.append("</").append(name).append(">\n");
        return this;
    }

    /** Markup that was written apart. */
    Markup ready(String markup) {
        text.append(markup);
        return this;
    }

    Markup words(String words) {
        text.append(Escaped.of(words));
        return this;
    }

    /** To a thousandth of a point, without an exponent, whatever the language of the computer. */
    static String number(double value, StringBuilder into) {
        long thousandths = Math.round(value * THOUSANDTHS);
        into.append(thousandths < 0 ? "-" : "").append(Math.abs(thousandths) / THOUSANDTHS);
        long rest = Math.abs(thousandths) % THOUSANDTHS;
        if (rest != 0) {
            String digits = String.valueOf(THOUSANDTHS + rest).substring(1);
            into.append('.').append(digits.replaceFirst("0+$", ""));
        }
        return into.toString();
    }

    private void number(double value) {
        number(value, text);
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
