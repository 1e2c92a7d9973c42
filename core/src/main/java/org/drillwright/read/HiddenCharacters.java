package org.drillwright.read;

import org.drillwright.source.Findings;
import org.drillwright.source.Span;

/** Refuses characters that cannot be seen but change what is read or shown. */
final class HiddenCharacters {

    private static final int REPORTED = 20;

    private HiddenCharacters() {}

    static void report(Findings findings) {
        String text = findings.file().text();
        int found = 0;
        int length;
        for (int at = 0; at < text.length() && found < REPORTED; at += length) {
            int point = text.codePointAt(at);
            length = Character.charCount(point);
            if (isHidden(point)) {
                found++;
                findings.error(
                        ReadingRule.PLAIN_TEXT.id(),
                        new Span(at, at + length),
                        String.format("A hidden character stands here (U+%04X, %s).", point, nature(point)),
                        "Delete it and type the word anew.");
            }
        }
    }

    private static boolean isHidden(int point) {
        boolean control = Character.isISOControl(point) && point != '\t' && point != '\n' && point != '\r';
        return control || turnsDirection(point) || isNoCharacter(point) || point == 0xFEFF;
    }

    /** The explicit overrides, embeddings and isolates of Unicode Annex 9. */
    private static boolean turnsDirection(int point) {
        return (point >= 0x202A && point <= 0x202E) || (point >= 0x2066 && point <= 0x2069);
    }

    private static boolean isNoCharacter(int point) {
        return (point & 0xFFFE) == 0xFFFE
                || (point >= 0xFDD0 && point <= 0xFDEF)
                || (point <= 0xFFFF && Character.isSurrogate((char) point));
    }

    private static String nature(int point) {
        if (turnsDirection(point)) {
            return "it turns the direction of the text";
        }
        return Character.isISOControl(point) ? "a control character" : "not a character of any script";
    }
}
