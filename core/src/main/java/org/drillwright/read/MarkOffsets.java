package org.drillwright.read;

import org.yaml.snakeyaml.error.Mark;

/** Turns the YAML library's marks, which count code points, into UTF-16 offsets. */
final class MarkOffsets {

    private final String text;
    private final boolean plain;
    private int lastPoints;
    private int lastOffset;

    MarkOffsets(String text) {
        this.text = text;
        this.plain = text.chars().noneMatch(unit -> Character.isSurrogate((char) unit));
    }

    String text() {
        return text;
    }

    int offset(Mark mark) {
        int points = mark.getIndex();
        if (plain) {
            return Math.min(points, text.length());
        }
        lastOffset = offsetByPoints(points);
        lastPoints = points;
        return lastOffset;
    }

    /** Goes on from the last answer, since nodes are asked for nearly in order. */
    private int offsetByPoints(int points) {
        int offset = lastOffset;
        int at = lastPoints;
        while (at < points && offset < text.length()) {
            offset += Character.charCount(text.codePointAt(offset));
            at++;
        }
        while (at > points && offset > 0) {
            offset -= Character.charCount(text.codePointBefore(offset));
            at--;
        }
        return offset;
    }
}
