package org.drillwright.print.text;

import java.util.List;

/**
 * One line of a paragraph.
 *
 * @param parts runs of one face each, drawn one behind the other
 * @param width as a share of the type size
 */
public record TextLine(List<Styled> parts, double width) {

    public TextLine {
        parts = List.copyOf(parts);
    }

    public String text() {
        return Styled.text(parts);
    }
}
