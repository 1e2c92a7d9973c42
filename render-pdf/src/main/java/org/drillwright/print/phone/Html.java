package org.drillwright.print.phone;

import org.drillwright.print.svg.Escaped;

/** HTML being written. Words and the values of attributes are escaped; names come from this room only. */
final class Html {

    private final StringBuilder text = new StringBuilder();

    /** @param attributes names and values by turns */
    Html start(String tag, String... attributes) {
        text.append('<').append(tag);
        for (int at = 0; at < attributes.length; at += 2) {
            text.append(' ').append(attributes[at]).append("=\"");
            text.append(Escaped.of(attributes[at + 1])).append('"');
        }
        text.append('>');
        return this;
    }

    Html end(String tag) {
        text.append("</").append(tag).append('>');
        return this;
    }

    Html words(String words) {
        text.append(Escaped.of(words));
        return this;
    }

    /** One element that holds nothing but words. */
    Html put(String tag, String words, String... attributes) {
        return start(tag, attributes).words(words).end(tag);
    }

    /** What was written as markup elsewhere in this program. */
    Html markup(String markup) {
        text.append(markup);
        return this;
    }

    Html line() {
        text.append('\n');
        return this;
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
